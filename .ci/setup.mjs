// Installs when the lock file has changed, then runs turbo with the arguments given.
// `--quiet` first: a following command owns stdout, so everything here goes to stderr.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const { packageManager } = JSON.parse(readFileSync(`${root}package.json`, "utf8"));
const quiet = process.argv[2] === "--quiet";
const tasks = process.argv.slice(quiet ? 3 : 2);

const run = (command, args, stdout) => {
  const env = { ...process.env, TURBO_TELEMETRY_DISABLED: "1" };
  const shell = process.platform === "win32";
  const { status, error } = spawnSync(command, args, { cwd: root, env, shell, stdio: ["ignore", stdout, 2] });
  if (error) console.error(error.message);
  if (status !== 0) process.exit(status ?? 1);
};

const stamp = `${root}node_modules/.installed`;
const lock = createHash("sha256")
  .update(readFileSync(`${root}pnpm-lock.yaml`))
  .digest("hex");
if (!existsSync(stamp) || readFileSync(stamp, "utf8") !== lock) {
  run("npx", ["--yes", packageManager, "install", "--frozen-lockfile"], 2);
  writeFileSync(stamp, lock);
}
if (tasks.length > 0) {
  const logs = quiet ? ["--output-logs=errors-only"] : [];
  run("turbo", ["run", ...tasks, ...logs], quiet ? 2 : 1);
}
