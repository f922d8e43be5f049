/** The deployment files, read as the tools that deploy read them. */

import { readdirSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { type ParseError, parse } from "jsonc-parser";
import { parseDocument } from "yaml";

const folder = resolve("../../apps/api/deploy");

export interface Wrangler {
  readonly main: string;
  readonly compatibility_date: string;
  readonly no_bundle: boolean;
  readonly find_additional_modules: boolean;
  readonly rules: readonly { readonly type: string; readonly globs: readonly string[] }[];
  readonly queues: {
    readonly producers: readonly { readonly queue: string; readonly binding: string }[];
    readonly consumers: readonly {
      readonly queue: string;
      readonly max_retries: number;
      readonly dead_letter_queue: string;
    }[];
  };
}

function jsonc(name: string): Wrangler {
  const errors: ParseError[] = [];
  const value = parse(readFileSync(`${folder}/${name}`, "utf8"), errors, { allowTrailingComma: false });
  if (errors.length > 0) throw new Error(`${name} is not JSON with comments: ${JSON.stringify(errors)}`);
  return value;
}

export const wrangler: Wrangler = jsonc("wrangler.jsonc");

interface Deployed {
  readonly script: string;
  /** What the script loads when it needs it, by name. */
  readonly apart: Readonly<Record<string, string>>;
  readonly compatibilityDate: string;
  readonly work: string;
  readonly results: string;
  readonly binding: string;
  readonly failed: string;
  readonly retries: number;
}

/** What a deployment of Workers needs of its file. */
export function deployed({ main, compatibility_date, rules, queues }: Wrangler): Deployed {
  const [producer, consumer] = [queues.producers[0]!, queues.consumers[0]!];
  return {
    script: resolve(folder, main),
    apart: filesOf(resolve(folder, main, ".."), rules[0]?.globs ?? []),
    compatibilityDate: compatibility_date,
    work: consumer.queue,
    results: producer.queue,
    binding: producer.binding,
    failed: consumer.dead_letter_queue,
    retries: consumer.max_retries,
  };
}

/** The files of a folder that any of these patterns names. */
function filesOf(from: string, globs: readonly string[]): Readonly<Record<string, string>> {
  const patterns = globs.map((glob) => new RegExp(`^${glob.replaceAll(".", "\\.").replaceAll("*", ".*")}$`));
  const names = readdirSync(from).filter((name) => patterns.some((pattern) => pattern.test(name)));
  return Object.fromEntries(names.map((name) => [name, resolve(from, name)]));
}

/** The modules that workerd's own configuration lists, by name. */
export function embedded(): Readonly<Record<string, string>> {
  const text = readFileSync(`${folder}/workerd.capnp`, "utf8");
  const modules = text.matchAll(/\(name = "([^"]+)", esModule = embed "([^"]+)"\)/g);
  return Object.fromEntries([...modules].map(([, name = "", path = ""]) => [name, resolve(folder, path)]));
}

/** The template, its short forms of functions (`!Ref x`) as their long ones (`{ Ref: x }`). */
export function template(): Readonly<Record<string, unknown>> {
  const short = ["Ref", "GetAtt", "Sub"].map((name) => ({
    tag: `!${name}`,
    resolve: (text: string) => ({ [name === "Ref" ? name : `Fn::${name}`]: text }),
  }));
  const document = parseDocument(readFileSync(`${folder}/template.yaml`, "utf8"), {
    customTags: short,
    strict: true,
    uniqueKeys: true,
  });
  const [problem] = [...document.errors, ...document.warnings];
  if (problem) throw problem;
  return document.toJS();
}
