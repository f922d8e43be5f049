/** Changes each constant of the core's relations by 1 %, one at a time, and asks the gate. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { fileURLToPath, pathToFileURL } from "node:url";
import vm from "node:vm";
import { buildSync } from "esbuild";
import { type Constant, constantsOf } from "./constants.js";
import type { Check } from "./gate.js";

const sources = new URL("../../../packages/core/src/", import.meta.url);
/** A check that does not end is a check that does not hold, ms. */
const patience = 20_000;

export interface Perturbation {
  readonly constants: number;
  /** Names of the constants whose change no check noticed. */
  readonly survivors: readonly string[];
  /** Checks that fail with nothing changed: there should be none. */
  readonly broken: readonly string[];
}

/** Runs the gate once with every constant as it is, then once for each constant made 1 % larger. `say` hears of each survivor as it is met. */
export function perturb(say: (name: string) => void): Perturbation {
  const folder = mkdtempSync(`${tmpdir()}/perturb-`);
  try {
    cpSync(fileURLToPath(sources), folder, { recursive: true });
    const constants = constantsOf(sources);
    const values = markConstants(pathToFileURL(`${folder}/`), constants);
    return askAll(compile(bundle(folder)), constants, values, say);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Puts `__constants[i]` in place of each constant of the copy; returns their values. */
function markConstants(root: URL, constants: readonly Constant[]): readonly number[] {
  const values = constants.map(() => Number.NaN);
  [...constants.entries()].reverse().forEach(([i, { file, start, end }]) => {
    const path = new URL(file, root);
    const text = readFileSync(path, "utf8");
    values[i] = Number(text.slice(start, end).replaceAll("_", ""));
    writeFileSync(path, `${text.slice(0, start)}__constants[${i}]${text.slice(end)}`);
  });
  return values;
}

function bundle(core: string): string {
  const { outputFiles } = buildSync({
    entryPoints: [fileURLToPath(new URL("gate.ts", import.meta.url))],
    alias: { "@plumbdrift/core": `${core}/index.ts` },
    bundle: true,
    format: "cjs",
    platform: "node",
    target: "node20",
    write: false,
    logLevel: "error",
  });
  return outputFiles[0]?.text ?? "";
}

type Gate = (constants: readonly number[]) => readonly Check[];

/** Compiles the bundle once; each call of the result runs it anew with other constants. */
function compile(code: string): Gate {
  const script = new vm.Script(`(function (module, require, __constants) {${code}\n})`, {
    filename: "gate.cjs",
  });
  const require = createRequire(import.meta.url);
  const texts = new Map<string, string>();
  const read = (file: string): string => {
    const text = texts.get(file) ?? readFileSync(new URL(`../sweep/${file}`, import.meta.url), "utf8");
    texts.set(file, text);
    return text;
  };
  return (constants) => {
    const module: { exports: { checks?: (read: (file: string) => string) => readonly Check[] } } = {
      exports: {},
    };
    script.runInThisContext()(module, require, constants);
    return module.exports.checks?.(read) ?? [];
  };
}

function askAll(
  gate: Gate,
  constants: readonly Constant[],
  values: readonly number[],
  say: (name: string) => void,
): Perturbation {
  const costs = gate(values).map(({ holds }, place) => {
    const before = performance.now();
    return { place, holds: holds(), cost: performance.now() - before };
  });
  const names = gate(values).map(({ name }) => name);
  const broken = costs.filter((c) => !c.holds).map((c) => names[c.place] ?? "");
  const order = costs
    .filter((c) => c.holds)
    .sort((a, b) => a.cost - b.cost)
    .map((c) => c.place);
  const survives = ({ name }: Constant, i: number): boolean => {
    const place = firstNotice(() => gate(values.map((value, j) => (i === j ? 1.01 * value : value))), order);
    if (place === null) say(name);
    if (place === null) return true;
    // what notices one constant is likely to notice the next
    order.unshift(...order.splice(order.indexOf(place), 1));
    return false;
  };
  return { constants: constants.length, survivors: constants.filter(survives).map((c) => c.name), broken };
}

/** The first check that fails, throws or does not end, or null where all hold. */
function firstNotice(make: () => readonly Check[], order: readonly number[]): number | null {
  let asked = order[0] ?? 0;
  const ask = (): number | null => {
    const checks = make();
    for (asked of order) if (checks[asked]?.holds() !== true) return asked;
    return null;
  };
  try {
    const context = vm.createContext({ ask });
    return vm.runInContext("ask()", context, { timeout: patience });
  } catch {
    return asked;
  }
}
