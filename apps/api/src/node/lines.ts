/** Lines of a log, written together once a turn of the event loop: a write to a file or a pipe waits for the system. */

import type { Writable } from "node:stream";

export function linesTo(stream: Writable): (line: string) => void {
  let waiting = "";
  const write = (): void => {
    if (waiting !== "") stream.write(waiting);
    waiting = "";
  };
  process.once("exit", write);
  return (line) => {
    if (waiting === "") setImmediate(write);
    waiting += `${line}\n`;
  };
}
