/** One relation swept: where its vectors are, how the core is asked, and how closely it must answer. */

export type Row = Readonly<Record<string, number>>;

export interface Sweep {
  readonly relation: string;
  readonly file: string;
  /** What computed the vectors. */
  readonly by: string;
  /** Columns of the file that the core must give. */
  readonly outputs: readonly string[];
  readonly evaluate: (row: Row) => Row;
  /** Greatest relative error allowed; 1e-9 where the relation is the same, else `because` says why not. */
  readonly tolerance: number;
  readonly because?: string;
  /** A size to which the error of an output is relative where the output itself may be near zero. */
  readonly scale?: (output: string, row: Row) => number;
}

/** A column of a row; a missing one is an error. */
export function cell(row: Row, name: string): number {
  const value = row[name];
  if (value === undefined) throw new TypeError(`no column is called ${name}`);
  return value;
}
