/** Who computes next. */

/** Units of work from which a computation keeps others waiting: some milliseconds. */
const LONG = 20_000;

/** Long computations one to a turn of the event loop, in the order they came. Between two of them the loop reads what has arrived, and takes a new
 *  connection, of which it takes one a turn: else those who are connected are served again and again before a newcomer once. Nothing is computed for who has left meanwhile: then it is nobody's turn. */
export function turns<C>(stillThere: (c: C) => boolean): (work: number, c: C) => Promise<boolean> {
  let last = Promise.resolve();
  return async (work, c) => {
    if (work < LONG) return true;
    last = last.then(() => new Promise((resolve) => setImmediate(resolve)));
    await last;
    return stillThere(c);
  };
}
