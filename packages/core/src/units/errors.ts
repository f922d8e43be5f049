/** What a caller's mistake looks like: it names the quantity, what was expected and what came. */

/** Thrown for a number outside what a quantity can be. `quantity` and `received` repeat what the message says. */
export class QuantityError extends RangeError {
  override readonly name = "QuantityError";
  readonly quantity: string;
  readonly expected: string;
  readonly received: unknown;

  constructor(quantity: string, expected: string, received: unknown) {
    super(`${quantity} must be ${expected}, got ${String(received)}`);
    this.quantity = quantity;
    this.expected = expected;
    this.received = received;
  }
}

/** Throws unless `value` is finite and above 0. `unit` is only for the message. */
export function requirePositive(quantity: string, value: number, unit = ""): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
    throw new QuantityError(quantity, `above 0${unit && ` ${unit}`}`, value);
  }
}

/** Throws unless `min` <= `value` <= `max`. `unit` is only for the message. */
export function requireWithin(quantity: string, value: number, min: number, max: number, unit = ""): void {
  if (!(value >= min && value <= max)) {
    throw new QuantityError(quantity, `from ${tidy(min)} to ${tidy(max)}${unit && ` ${unit}`}`, value);
  }
}

/** The row of a table; throws QuantityError, naming what was expected, for a key it does not have. */
export function rowOf<K extends string, V>(quantity: string, table: Readonly<Record<K, V>>, key: K): V {
  if (Object.hasOwn(table, key)) return table[key];
  throw new QuantityError(quantity, `one of ${Object.keys(table).join(", ")}`, key);
}

/** Without the last bits of a conversion: 0.9144 for three feet, not 0.9144000000000001. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
