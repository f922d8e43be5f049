/** Bearer keys (RFC 6750), known by their SHA-256 hashes only. A key is 256 random bits, so its hash needs no salt. */

export interface Key {
  /** What the log calls it. */
  readonly name: string;
  readonly hash: Uint8Array;
}

/** Reads keys of the form name=hash; nothing when one is not of it, or a name stands twice. */
export function keysOf(parts: readonly string[]): readonly Key[] | undefined {
  const read = parts.map((part) => /^([\w-]{1,40})=([0-9a-f]{64})$/i.exec(part));
  const keys = read.flatMap((found) =>
    found === null ? [] : [{ name: found[1] ?? "", hash: bytesOf(found[2] ?? "") }],
  );
  const names = new Set(keys.map(({ name }) => name));
  return names.size === parts.length ? keys : undefined;
}

/** The name of the key in a header Authorization, or nothing. Takes as long for every key: none is left out, no byte is skipped. */
export async function keyIn(header: string, keys: readonly Key[]): Promise<string | undefined> {
  const token = /^Bearer +([\w.~+/-]{1,512}=*)$/i.exec(header.trim())?.[1] ?? "";
  const hash = await sha256(token);
  let name: string | undefined;
  for (const key of keys) {
    let different = 0;
    for (let i = 0; i < hash.length; i++) different |= (hash[i] ?? 0) ^ (key.hash[i] ?? 0);
    if (different === 0) name = key.name;
  }
  return name;
}

/** A new key, and the entry for the configuration. */
export async function newKey(name: string): Promise<{ readonly key: string; readonly entry: string }> {
  const random = crypto.getRandomValues(new Uint8Array(32));
  const key = btoa(String.fromCharCode(...random))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
  const hash = await sha256(key);
  return { key, entry: `${name}=${[...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("")}` };
}

async function sha256(text: string): Promise<Uint8Array> {
  return new Uint8Array(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text)));
}

function bytesOf(hex: string): Uint8Array {
  return Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
}
