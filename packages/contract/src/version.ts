/** Version of the HTTP contract, as the OpenAPI document states it. */
export const CONTRACT_VERSION = "0.2.0";

/** Version of the engine that computes: that of @plumbdrift/core (a test compares them). */
export const ENGINE_VERSION = "0.1.0";
