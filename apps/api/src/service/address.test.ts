import { expect, test } from "vitest";
import { clientAddress } from "./address.js";

// addresses of RFC 5737 and RFC 3849, for documentation
test.each([
  ["nobody in front is believed", "192.0.2.1", "203.0.113.9", 0, "192.0.2.1"],
  ["one proxy: what it saw, not what the client wrote", "10.0.0.1", "8.8.8.8, 203.0.113.9", 1, "203.0.113.9"],
  ["two proxies", "10.0.0.1", "1.1.1.1, 203.0.113.9, 10.0.0.2", 2, "203.0.113.9"],
  ["fewer entries than proxies", "10.0.0.1", "203.0.113.9", 2, "203.0.113.9"],
  ["no header", "10.0.0.1", undefined, 1, "10.0.0.1"],
  ["IPv4 in IPv6", "::ffff:192.0.2.1", undefined, 0, "192.0.2.1"],
  ["IPv6 by its network", "2001:db8:1:2:3:4:5:6", undefined, 0, "2001:db8:1:2::/64"],
  ["IPv6 shortened", "2001:db8::6", undefined, 0, "2001:db8:0:0::/64"],
])("%s", (_name, connection, forwarded, proxies, client) => {
  expect(clientAddress(connection, forwarded, proxies)).toBe(client);
});
