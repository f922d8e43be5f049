/** Which client a request came from, as far as that can be believed. */

/** The address that the outermost proxy of ours saw, or else that of the connection. IPv6 counts by its first 64 bits: one subscriber has all of them. */
export function clientAddress(connection: string, forwarded: string | undefined, proxies: number): string {
  const hops = forwarded === undefined ? [] : forwarded.split(",").map((hop) => hop.trim());
  const seen = proxies > 0 ? hops.at(-Math.min(proxies, hops.length)) : undefined;
  return network((seen ?? connection).slice(0, 60));
}

function network(address: string): string {
  const mapped = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(address)?.[1];
  if (mapped !== undefined || !address.includes(":")) return mapped ?? address;
  const [head = "", tail] = address.split("::");
  const [first, last] = [head, tail ?? ""].map((part) => part.split(":").filter((group) => group !== ""));
  const zeros = tail === undefined ? 0 : 8 - (first?.length ?? 0) - (last?.length ?? 0);
  const groups = [
    ...(first ?? []),
    ...Array.from({ length: Math.max(0, zeros) }, () => "0"),
    ...(last ?? []),
  ];
  return `${groups.slice(0, 4).join(":")}::/64`;
}
