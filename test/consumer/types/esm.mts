import * as core from "@plumbdrift/core";

export const names: object = core;

// @ts-expect-error A name that is not exported is an error; were the types missing, it would not be.
export const missing: unknown = core.noSuchName;
