/** Who computes next. */

/** Units of work from which a computation keeps others waiting: some milliseconds. */
const LONG = 20_000;

/** Long computations one to a turn of the event loop, in the order they came. Between two of them the loop reads what has arrived, and takes a new
 *  connection, of which it takes one a turn: else those who are connected are served again and again before a newcomer once. */
export function turns(): (work: number) => Promise<void> {
  let last = Promise.resolve();
  return (work) => {
    if (work < LONG) return Promise.resolve();
    last = last.then(() => new Promise((resolve) => setImmediate(resolve)));
    return last;
  };
}
