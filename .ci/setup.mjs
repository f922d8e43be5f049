// Installs when the lock file has changed, then runs turbo with the arguments given.
// `--quiet` first: a following command owns stdout, and nothing is said (on stderr) unless something fails or has to be installed.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const { packageManager } = JSON.parse(readFileSync(`${root}package.json`, "utf8"));
const quiet = process.argv[2] === "--quiet";
const tasks = process.argv.slice(quiet ? 3 : 2);

const run = (command, args) => {
  const env = { ...process.env, TURBO_TELEMETRY_DISABLED: "1" };
  const shell = process.platform === "win32";
  const stdio = quiet ? ["ignore", "pipe", "pipe"] : "inherit";
  const options = { cwd: root, env, shell, stdio, maxBuffer: 1e8 };
  const { status, error, stdout, stderr } = spawnSync(command, args, options);
  if (status === 0) return;
  console.error([stdout, stderr, error?.message].filter((said) => said?.length > 0).join("\n"));
  process.exit(status ?? 1);
};

const stamp = `${root}node_modules/.installed`;
const lock = createHash("sha256")
  .update(readFileSync(`${root}pnpm-lock.yaml`))
  .digest("hex");
if (!existsSync(stamp) || readFileSync(stamp, "utf8") !== lock) {
  if (quiet) console.error("Installing, then building: this takes a minute, once.");
  run("npx", ["--yes", packageManager, "install", "--frozen-lockfile"]);
  writeFileSync(stamp, lock);
}
if (tasks.length > 0) run("turbo", ["run", ...tasks, ...(quiet ? ["--output-logs=errors-only"] : [])]);
