/** Makes a key and the entry that lets it in: `pnpm -C apps/api run key log-app`. The key is shown once and kept nowhere. */
import { newKey } from "../service/keys.js";

const name = process.argv[2] ?? "";
if (!/^[\w-]{1,40}$/.test(name)) {
  console.error(`a key needs a name of 1 to 40 letters, digits, _ and -, got "${name.slice(0, 60)}"`);
  process.exit(1);
}
const { key, entry } = await newKey(name);
console.log(`Give to the caller:       ${key}`);
console.log(`Add to PLUMBDRIFT_API_KEYS: ${entry}`);
