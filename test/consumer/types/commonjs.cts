import core = require("@plumbdrift/core");

const names: object = core;

// @ts-expect-error A name that is not exported is an error; were the types missing, it would not be.
const missing: unknown = core.noSuchName;

export = { names, missing };
