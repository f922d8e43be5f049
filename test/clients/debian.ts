/** Programs that come as Debian packages. */

import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";

/** The path of a program, whose package is installed where it is missing and may be. */
export function program(name: string): string {
  const path = `/usr/bin/${name}`;
  if (existsSync(path)) return path;
  const apt = (...args: string[]) => execFileSync("apt-get", args, { stdio: "ignore" });
  apt("update");
  apt("install", "--yes", "--no-install-recommends", name);
  return path;
}
