import { describe, expect, test } from "vitest";
import { deprecationHeaders } from "./deprecation.js";

const link = "https://example.org/columns";
const since = "2023-06-30T23:59:59Z";

describe("the headers of an operation on its way out", () => {
  test("give both instants in the form of their standard", () => {
    // the instant of the example in RFC 9745, section 2.1; an HTTP date is that of RFC 9110, section 5.6.7
    expect(deprecationHeaders({ since, sunset: "2024-06-30T23:59:59Z", link })).toEqual({
      Deprecation: "@1688169599",
      Sunset: "Sun, 30 Jun 2024 23:59:59 GMT",
      Link: `<${link}>; rel="deprecation"; type="text/html"`,
    });
  });

  test("leave a sunset out that is still open", () => {
    expect(deprecationHeaders({ since, link })).not.toHaveProperty("Sunset");
  });

  test.each([
    { since, sunset: "2023-06-30T23:59:58Z", link },
    { since: "2023-06-30", link },
    { since: "2023-13-30T00:00:00Z", link },
  ])("are refused for %j", (deprecation) => {
    expect(() => deprecationHeaders(deprecation)).toThrow(RangeError);
  });
});
