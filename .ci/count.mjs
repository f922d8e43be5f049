// Sums the vitest reports of every package that has tests; the last line is the count.
// Argument 1: how many of the commands before this one failed.
import { existsSync, readdirSync, readFileSync } from "node:fs";

let passed = 0;
let failed = 0;
for (const folder of ["packages", "apps", "test"].flatMap((top) =>
  readdirSync(top).map((name) => `${top}/${name}`),
)) {
  if (!existsSync(`${folder}/package.json`)) continue;
  if (!JSON.parse(readFileSync(`${folder}/package.json`, "utf8")).scripts?.test) continue;
  const reports = existsSync(`${folder}/.reports`) ? readdirSync(`${folder}/.reports`) : [];
  if (!reports.includes("vitest.json")) {
    console.log(`${folder}: no report, counted as a failure`);
    failed += 1;
  }
  for (const name of reports.filter((file) => file.endsWith(".json"))) {
    const report = JSON.parse(readFileSync(`${folder}/.reports/${name}`, "utf8"));
    passed += report.numPassedTests;
    // A test file that does not load fails without a single failed test.
    failed += Math.max(report.numFailedTests, report.success ? 0 : 1);
  }
}
if (failed === 0 && process.argv[2] !== "0") {
  console.log("a build, lint, type or slow check failed, counted as a failure");
  failed = 1;
}
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
