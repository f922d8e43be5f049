/** What a value is on the wire, and the strict schema of an object of that type. */

import { z } from "@hono/zod-openapi";
import type { Dimension, Dimensions, Unit } from "./units.js";

/** A quantity says its unit: `{ "value": 18, "unit": "in" }`. */
export interface Said<D extends Dimension> {
  readonly value: number;
  readonly unit: Unit<D>;
}

/** The branded SI number of a dimension. */
type SiIn<D extends Dimension> =
  Dimensions[D] extends Readonly<Record<string, (value: number) => infer Q>> ? Q : never;

/** The branded SI number that a value in unit `U` becomes. */
type SiOf<U> = { [D in Dimension]: U extends Unit<D> ? SiIn<D> : never }[Dimension];

/** The quantity that a branded SI number is said as, never for a plain number. */
type SaidOf<Q> = { [D in Dimension]: Q extends SiIn<D> ? Said<D> : never }[Dimension];

/** What a value of the core is on the wire: quantities are said, and what may be null may be absent. */
export type Wire<T> = T extends number
  ? [SaidOf<T>] extends [never]
    ? T
    : SaidOf<T>
  : T extends readonly (infer E)[]
    ? readonly Wire<E>[]
    : T extends object
      ? Optional<Pick<T, Absentable<T>>> & { readonly [K in Exclude<keyof T, Absentable<T>>]: Wire<T[K]> }
      : T;

/** The keys of `T` that need not be there. */
type Absentable<T> = {
  [K in keyof T]-?: null extends T[K] ? K : undefined extends T[K] ? K : never;
}[keyof T];

type Optional<T> = { readonly [K in keyof T]?: Wire<NonNullable<T[K]>> | undefined };

/** The other way: quantities have become SI numbers. What is absent from a body is absent; from a result of the core it may be `Absent` too. */
export type Decoded<T, Absent = never> = T extends { value: number; unit: infer U }
  ? SiOf<U>
  : T extends readonly (infer E)[]
    ? readonly Decoded<E, Absent>[]
    : T extends object
      ? {
          readonly [K in keyof T]:
            | Decoded<Exclude<T[K], undefined>, Absent>
            | (undefined extends T[K] ? Absent : never);
        }
      : T;

type Fields<T> = {
  -readonly [K in keyof T]-?: undefined extends T[K]
    ? z.ZodOptional<Field<Exclude<T[K], undefined>>>
    : Field<T[K]>;
};

/** What may be one of some words is an enumeration of all of them: a schema that leaves one out is of the type, too. */
type Field<T> = [T] extends [string]
  ? string extends T
    ? z.core.$ZodType<T>
    : Enumeration<T>
  : z.core.$ZodType<T>;

/** The schema of these words and no other. */
export type Enumeration<W extends string> = z.ZodEnum<{ [K in W]: K }>;

/** The schema of an object with the keys of `T` and no other. */
export type Strict<T> = z.ZodObject<Fields<T>, z.core.$strict>;

/** Makes that schema: a key that `T` lacks, a key that is missing and a field of another type are errors of the compiler. */
export function strict<T>(fields: Fields<T>): Strict<T> {
  return z.strictObject(fields);
}

/** The word that tells a variant of a union from the others. */
export function tag<W extends string>(word: W): Enumeration<W> {
  return z.enum([word]).openapi({ description: "Which variant this is." });
}

/** A number without dimension, and what it means. */
export function plain(description: string): z.ZodNumber {
  return z.number().openapi({ description });
}

/** How many. */
export function count(description: string): z.ZodNumber {
  return z.number().int().min(0).max(1e9).openapi({ description });
}
