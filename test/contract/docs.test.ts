/** docs/api.md says what the contract does: its requests are named examples, its tables are those of the code. */

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { app } from "@plumbdrift/api";
import { dimensions, operations, problemKinds } from "@plumbdrift/contract";
import { describe, expect, test } from "vitest";
import { type Body, exampleOf, examplesOf, post } from "./api.js";

const text = readFileSync(fileURLToPath(new URL("../../docs/api.md", import.meta.url)), "utf8");
const calls = [...text.matchAll(/^curl .*?localhost:8787(\/v1\/\S+) .*?-d '(.*?)'$/gms)].map(
  ([, path = "", body = ""]) => ({ path, body: JSON.parse(body) as Body }),
);

/** The arguments of every call of curl that the page shows: words, or what stands between single quotes. */
const commands = [...text.matchAll(/^```sh\n(.*?)^```/gms)]
  .flatMap(([, shell = ""]) => shell.split(/^(?=curl )/m))
  .filter((command) => command.startsWith("curl "))
  .map((command) =>
    [...command.matchAll(/'([^']*)'|(\S+)/g)].map(([, quoted, word]) => quoted ?? word ?? ""),
  );

/** What curl would send. */
function requestOf(words: readonly string[]): { readonly path: string; readonly init: RequestInit } {
  const after = (...flags: readonly string[]): string[] =>
    words.filter((_, i) => flags.includes(words[i - 1] ?? ""));
  const url = words.find((word) => word.startsWith("localhost:8787")) ?? "";
  const headers = Object.fromEntries(after("-H").map((header) => header.split(/: (.*)/s).slice(0, 2)));
  const [body] = after("-d", "--data", "--data-binary");
  const [method = body === undefined ? "GET" : "POST"] = after("-X");
  const init = body === undefined ? { method, headers } : { method, headers, body };
  return { path: url.replace("localhost:8787", ""), init };
}

describe("docs/api.md", () => {
  test.each(commands.map((words) => [words.find((word) => word.includes(":8787")) ?? "", words] as const))(
    "%s is answered",
    async (_url, words) => {
      const { path, init } = requestOf(words);
      const response = await app.request(path, init);
      expect(response.status).toBe(
        path.startsWith("/v1/channels/jumps") && init.method === "QUERY" ? 304 : 200,
      );
      if (response.status === 304) return;
      const answer = (await response.text()).trimEnd().split("\n");
      const statuses = answer.flatMap((line) => {
        const { status, items = [] } = JSON.parse(line);
        return [status, ...items.map((item: Body) => item.status)].filter((one) => typeof one === "number");
      });
      expect(statuses).toEqual(path !== "/v1/batch" ? [] : answer.length > 1 ? [200, 200] : [200, 400]);
    },
  );

  test.each(operations.map(({ path }) => path))("calls %s with a named example", (path) => {
    const sent = calls.filter((call) => call.path === path).map(({ body }) => body);
    const named = Object.values(examplesOf(path)).map(({ value }) => value);
    expect(sent).toHaveLength(1);
    expect(named).toContainEqual(sent[0]);
  });

  test("shows the problem that a misspelt key gets", async () => {
    const shown = JSON.parse(/```json\n(.*?)```/s.exec(text)?.[1] ?? "null");
    const body = exampleOf("/v1/columns");
    body.water.dpeth = body.water.depth;
    delete body.water.depth;
    expect((await post("/v1/columns", body)).body).toEqual(shown);
  });

  test("leads to the page that explains every problem code", () => {
    const page = readFileSync(fileURLToPath(new URL("../../docs/problems.md", import.meta.url)), "utf8");
    expect(text).toContain("(problems.md)");
    for (const [code, { status, meaning }] of Object.entries(problemKinds)) {
      expect(page).toContain(`\n## ${code}\n\n${status}. ${meaning}\n`);
    }
  });

  test("lists every unit", () => {
    for (const [dimension, units] of Object.entries(dimensions)) {
      const row = Object.keys(units).map((unit) => `\`${unit}\``);
      expect(text.replace(/ +/g, " ")).toContain(`\n| ${dimension} | ${row.join(", ")} |\n`);
    }
  });
});
