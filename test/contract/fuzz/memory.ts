/** What stays in memory after so many requests. */

/** A measurement of the heap. */
export interface Heap {
  /** Requests sent before it. */
  readonly requests: number;
  /** Bytes in use after a full collection. */
  readonly bytes: number;
}

/** Measures the heap. Node must run with --expose-gc. */
export async function heapAfter(requests: number): Promise<Heap> {
  for (let i = 0; i < 3; i++) {
    globalThis.gc!();
    await new Promise((resume) => setTimeout(resume, 20)); // what waits for finalizers goes with the next one
  }
  return { requests, bytes: process.memoryUsage().heapUsed };
}

/** Bytes a request, by the line of least squares. */
export function slopeOf(heaps: readonly Heap[]): number {
  const mean = (of: (heap: Heap) => number): number =>
    heaps.reduce((sum, heap) => sum + of(heap), 0) / heaps.length;
  const [x, y] = [mean(({ requests }) => requests), mean(({ bytes }) => bytes)];
  const along = heaps.reduce((sum, { requests, bytes }) => sum + (requests - x) * (bytes - y), 0);
  return along / heaps.reduce((sum, { requests }) => sum + (requests - x) ** 2, 0);
}
