import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Environment, readConfig } from "./config.js";
import { newKey } from "./keys.js";
import { settings } from "./settings.js";

const hash = "0123456789abcdef".repeat(4);

function mistakes(environment: Environment): readonly string[] {
  const reading = readConfig(environment);
  return reading.ok ? [] : reading.mistakes;
}

function config(environment: Environment) {
  const reading = readConfig(environment);
  if (!reading.ok) throw new Error(reading.mistakes.join());
  return reading.config;
}

describe("a configuration", () => {
  test("asks nothing of who starts on loopback", () => {
    expect(config({ PATH: "/bin", HOSTNAME: "a", PORT: "" })).toMatchObject({
      port: 8787,
      host: "127.0.0.1",
      keys: [],
      anonymous: true,
      rate: undefined,
    });
  });

  test.each([
    ["PORT", "eighty", "a whole number from 0 to 65535"],
    ["PORT", "65536", "a whole number from 0 to 65535"],
    ["PORT", "-1", "a whole number from 0 to 65535"],
    ["PORT", "0x50", "a whole number from 0 to 65535"],
    ["HOST", "a b", "a name or an address to listen on"],
    ["ALLOW_ANONYMOUS", "yes", "0 or 1"],
    ["PLUMBDRIFT_CORS_ORIGINS", "https://a.example/path", "* or origins"],
    ["PLUMBDRIFT_CORS_ORIGINS", "*, https://a.example", "* or origins"],
    ["PLUMBDRIFT_RATE_UNITS", "1e6", "a whole number from 0 to 1000000000"],
    ["PLUMBDRIFT_RATE_SECONDS", "0", "a whole number from 1 to 86400"],
    ["PLUMBDRIFT_TRUSTED_PROXIES", "all", "a whole number from 0 to 10"],
    ["PLUMBDRIFT_COMPRESS", "true", "0 or 1"],
    ["PLUMBDRIFT_LOG", "debug", "off, errors or requests"],
    ["PLUMBDRIFT_REQUEST_SECONDS", "0.5", "a whole number from 1 to 600"],
    ["PLUMBDRIFT_STOP_SECONDS", "601", "a whole number from 1 to 600"],
    ["OTEL_EXPORTER_OTLP_ENDPOINT", "collector", "an http or https address"],
  ])("says that %s cannot be %s", (name, value, expected) => {
    expect(mistakes({ [name]: value })).toEqual([expect.stringContaining(`${name} must be ${expected}`)]);
    expect(mistakes({ [name]: value })[0]).toContain(`got "${value}"`);
  });

  test.each([
    ["a key itself", "not-a-hash-but-the-key"],
    ["a hash without a name", hash],
    ["half a hash", `app=${hash.slice(1)}`],
    ["a name twice", `app=${hash},app=${hash}`],
    ["a trailing comma", `app=${hash},`],
  ])("refuses %s for a key, and does not print it", (_name, value) => {
    const said = mistakes({ PLUMBDRIFT_API_KEYS: value });
    expect(said).toEqual([expect.stringContaining("PLUMBDRIFT_API_KEYS must be name=hash")]);
    expect(said[0]).not.toContain(value);
  });

  test.each([
    ["PLUMBDRIFT_RATE_UNIT", "did you mean PLUMBDRIFT_RATE_UNITS?"],
    ["PLUMBDRIFT_PORT", "did you mean PORT?"],
    ["PLUMBDRIFT_ALLOW_ANONYMOUS", "did you mean ALLOW_ANONYMOUS?"],
    ["PLUMBDRIFT_X", "known are PORT, HOST"],
  ])("does not pass over %s", (name, hint) => {
    expect(mistakes({ [name]: "1" })).toEqual([expect.stringContaining(hint)]);
  });

  test("names every mistake at once", () => {
    expect(mistakes({ PORT: "x", PLUMBDRIFT_LOG: "x", PLUMBDRIFT_LOGS: "x" })).toHaveLength(3);
  });
});

describe("a public address", () => {
  test.each(["0.0.0.0", "::", "192.0.2.7", "api.example", "127.0.0.1.example"])(
    "%s is refused without keys",
    (HOST) => {
      expect(mistakes({ HOST })).toEqual([
        expect.stringContaining("set PLUMBDRIFT_API_KEYS, or ALLOW_ANONYMOUS=1"),
      ]);
      expect(mistakes({ HOST, ALLOW_ANONYMOUS: "0" })).toHaveLength(1);
    },
  );

  test.each(["127.0.0.1", "127.8.8.8", "::1", "localhost"])("%s is none", (HOST) => {
    expect(mistakes({ HOST })).toEqual([]);
  });

  test("is served with keys, with leave, or with both", async () => {
    const { entry } = await newKey("app");
    const HOST = "0.0.0.0";
    expect(config({ HOST, PLUMBDRIFT_API_KEYS: entry }).anonymous).toBe(false);
    expect(config({ HOST, ALLOW_ANONYMOUS: "1" }).anonymous).toBe(true);
    expect(config({ HOST, ALLOW_ANONYMOUS: "1", PLUMBDRIFT_API_KEYS: entry })).toMatchObject({
      anonymous: true,
      keys: [{ name: "app" }],
      rate: { units: 20_000_000, seconds: 60 },
    });
  });
});

test("docs/operation.md lists every variable", () => {
  const text = readFileSync(new URL("../../../../docs/operation.md", import.meta.url), "utf8");
  const rows = text.match(/^\| `[A-Z_]+`.*$/gm)?.map((row) => row.replace(/ +/g, " "));
  expect(rows).toEqual(
    Object.entries(settings).map(
      ([name, { means, expected, unset }]) => `| \`${name}\` | ${means} | ${expected} | ${unset} |`,
    ),
  );
});
