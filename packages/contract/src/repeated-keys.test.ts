import { describe, expect, test } from "vitest";
import { MAX_ERRORS } from "./field-errors.js";
import { repeatedKeys } from "./repeated-keys.js";

const paths = (text: string): readonly string[] => {
  JSON.parse(text); // it is asked of JSON only
  return repeatedKeys(text).map(({ path }) => path);
};

describe("a repeated key", () => {
  test.each([
    ['{"a":1,"b":2,"a":3}', ["/a"]],
    ['{"a":{"b":1,"b":1}}', ["/a/b"]],
    ['{ "a" : [ 0 , {"b":1} , {"c":[[],[1,2]],"b":1 , "b" : 2 } ] }', ["/a/2/b"]],
    ['[[1,[2]],{"a":1,"a":[{"b":1,"b":2}],"a":3}]', ["/1/a", "/1/a/0/b", "/1/a"]],
    ['{"\\u0061":1,"a":2}', ["/a"]], // RFC 8259, section 8.3: names are compared as they read, not as they are written
    ['{"":1,"":2}', ["/"]],
    ['{"__proto__":1,"__proto__":2}', ["/__proto__"]],
    ['{"a/~":1,"a/~":2}', ["/a~1~0"]], // RFC 6901, section 4
  ])("is found in %s", (text, found) => {
    expect(paths(text)).toEqual(found);
  });

  test.each([
    '{"a":{"a":{"a":1}},"b":{"a":1}}',
    '{"a":"a","b":"a"}',
    '["a","a",":","a"]',
    '{"a":"\\",\\"a\\":1,\\\\","b":"{\\"b\\":1}"}',
    '{"a":1,"A":2,"toString":3}',
    '"a"',
    "1e5",
    `${"[".repeat(1e5)}${"]".repeat(1e5)}`,
  ])("is not in %.40s", (text) => {
    expect(paths(text)).toEqual([]);
  });

  test("is not told more often than a problem lists faults, nor below any schema", () => {
    expect(paths(`[${Array(100).fill('{"a":1,"a":2}').join()}]`)).toHaveLength(MAX_ERRORS);
    expect(paths(`${'{"a":'.repeat(5e4)}{"b":1,"b":2}${"}".repeat(5e4)}`)).toEqual([]);
  });
});
