import {
  type RankSetupsResponse,
  type ReadColumnResponse,
  rankSetups,
  readColumn,
} from "@plumbdrift/contract";
import { beforeAll, describe, expect, test } from "vitest";
import { app } from "./app.js";
import { said, short, WIDTH, wrapped } from "./demo/say.js";
import { columnRequest, setupsRequest } from "./demo/stop.js";
import { demoText } from "./demo/text.js";

async function ask<T>(path: string, request: unknown): Promise<T> {
  const headers = { "content-type": "application/json" };
  return (await app.request(path, { method: "POST", headers, body: JSON.stringify(request) })).json() as T;
}

describe.each(["si", "us"] as const)("the demo in %s", (units) => {
  let ranking: RankSetupsResponse;
  let text = "";

  beforeAll(async () => {
    ranking = await ask<RankSetupsResponse>(rankSetups.path, setupsRequest(units));
    text = demoText(await ask<ReadColumnResponse>(readColumn.path, columnRequest(units)), ranking);
  });

  test("says that its stop, river and flies are invented", () => {
    expect(text.split("\n")[0]).toMatch(/invented stop on an invented river, and invented flies/);
  });

  test("fits into 80 columns, without colour, without trailing blanks", () => {
    const lines = text.split("\n");
    expect(lines.filter((line) => [...line].length > 80)).toEqual([]);
    expect(lines.filter((line) => line !== line.trimEnd())).toEqual([]);
    // the only control character is the end of a line
    expect(text).not.toMatch(/(?!\n)\p{Cc}/u);
  });

  test("lists five setups, each with why, how and what to watch", () => {
    expect(ranking.setups.map(({ place }) => place)).toEqual([1, 2, 3, 4, 5]);
    for (const { place, tied } of ranking.setups) {
      const start = text.indexOf(`\n${place}. ${tied.dry.name}`);
      expect(start).toBeGreaterThan(0);
      const block = text.slice(start + 1, text.indexOf("\n\n", start + 1));
      expect(block).toMatch(/in the fish's window[\s\S]*Present: land it[\s\S]*Why: /);
    }
  });

  test("places the rig in hand", () => {
    expect(text).toMatch(
      new RegExp(`Place (about )?${ranking.inHand?.place} among ${ranking.candidates}: hackle dry 14`),
    );
  });

  test("draws a dry on the surface and its nymph below", () => {
    const drawing =
      text.slice(text.indexOf("The best setup, settled")).match(/^ +\d+\.\d+ (ft|m) .*$/gm) ?? [];
    expect(drawing[0]).toMatch(/~O~/);
    expect(drawing.slice(1).join("\n")).toContain("@");
    expect(drawing.at(-1)).toMatch(/____/);
  });
});

describe("words for a terminal", () => {
  test("quantities are short and never exponents", () => {
    expect(said({ value: 2.8123, unit: "ft/s" })).toBe("2.8 ft/s");
    expect(said({ value: 53.96, unit: "degF" }, 3)).toBe("54 °F");
    expect(said({ value: 9.72, unit: "deg" })).toBe("9.7°");
    expect(short({ value: 1.5, unit: "ft" })).toBe("18 in");
    expect(short({ value: 0.454, unit: "m" })).toBe("45 cm");
  });

  test("a text breaks before the margin and keeps every word", () => {
    const words = Array.from({ length: 60 }, (_, i) => `word${i}`).join(" ");
    const lines = wrapped(words, "   ", "1. ").split("\n");
    expect(lines.every((line) => line.length <= WIDTH)).toBe(true);
    expect(lines.map((line) => line.trim()).join(" ")).toBe(`1. ${words}`);
  });
});
