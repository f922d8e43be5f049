/** Which drag coefficient a body uses: its published law, or a constant for checks against closed forms. */

/** `standard` is the published law for the body's shape: Brown and Lawler for spheres, Sucker and Brauer for cylinders. */
export type DragLaw = "standard" | { readonly coefficient: number };

/** The drag coefficient against Reynolds number under a law. */
export function dragCoefficient(
  law: DragLaw,
  standard: (reynolds: number) => number,
): (reynolds: number) => number {
  if (law === "standard") return standard;
  const { coefficient } = law;
  return () => coefficient;
}
