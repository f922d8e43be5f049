/** Version of the HTTP contract, as the OpenAPI document states it. */
export const CONTRACT_VERSION = "0.1.0";
