/** The ceilings of the service, in one place. */

/** The most bytes that the body of a computation, or one line of a stream, may have. */
export const MAX_BODY_BYTES: number = 512 * 1024;

/** What one batch may hold: everything is read, understood and counted before anything is computed. */
export const BATCH: { readonly bytes: number; readonly items: number; readonly work: number } = {
  bytes: 4 * 1024 * 1024,
  items: 1_000,
  work: 20_000_000,
};

/** What one stream may hold: each line is computed before the next is read. */
export const STREAM: { readonly lineBytes: number; readonly lines: number; readonly work: number } = {
  lineBytes: MAX_BODY_BYTES,
  lines: 10_000,
  work: 200_000_000,
};
