/** Reads the inputs of a case; a missing or misnamed one is an error, never a default. */
import type { Inputs } from "./case.js";

export function number(inputs: Inputs, name: string): number {
  const value = inputs[name];
  if (typeof value !== "number") throw new TypeError(`input ${name} must be a number, got ${String(value)}`);
  return value;
}

export function numbers(inputs: Inputs, name: string): readonly number[] {
  const value = inputs[name];
  if (typeof value !== "object") throw new TypeError(`input ${name} must be a list, got ${String(value)}`);
  return value;
}

export function text(inputs: Inputs, name: string): string {
  const value = inputs[name];
  if (typeof value !== "string") throw new TypeError(`input ${name} must be text, got ${String(value)}`);
  return value;
}
