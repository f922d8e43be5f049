import core = require("@plumbdrift/core");

// @ts-expect-error A name that is not exported is an error; were the types missing, it would not be.
const missing: unknown = core.noSuchName;

const said: readonly unknown[] = [core, missing];
export = said;
