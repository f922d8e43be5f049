/** Closed forms of a line held in a uniform stream, written from the equations alone: nothing of the core is used here. */

export interface HeldLine {
  readonly relativeSpeed: number;
  readonly diameter: number;
  readonly length: number;
  readonly weightPerMetre: number;
  readonly normalDrag: number;
  readonly sinkerWeight: number;
  readonly sinkerDrag: number;
}

export interface LineAnswer {
  /** Horizontal and vertical force at the float. */
  readonly pull: number;
  readonly load: number;
  readonly tension: number;
  readonly drop: number;
  readonly downstream: number;
}

/** Weightless line, drag across it only: the tension is constant and cot φ grows by R s/T. */
export function weightless(l: HeldLine): LineAnswer {
  const tension = Math.hypot(l.sinkerWeight, l.sinkerDrag);
  const k = normalForce(l) / tension;
  const c0 = l.sinkerDrag / l.sinkerWeight;
  const c1 = c0 + k * l.length;
  const run = Math.hypot(1, c1) - Math.hypot(1, c0);
  return {
    pull: (tension * c1) / Math.hypot(1, c1),
    load: tension / Math.hypot(1, c1),
    tension,
    drop: (Math.asinh(c1) - Math.asinh(c0)) / k,
    downstream: run / k,
  };
}

/** No drag on the line: a catenary with the horizontal force of the sinker's drag. */
export function catenary(l: HeldLine): LineAnswer {
  const H = l.sinkerDrag;
  const w = l.weightPerMetre;
  const V1 = l.sinkerWeight + w * l.length;
  return {
    pull: H,
    load: V1,
    tension: Math.hypot(H, V1),
    drop: (Math.hypot(H, V1) - Math.hypot(H, l.sinkerWeight)) / w,
    downstream: (H / w) * (Math.asinh(V1 / H) - Math.asinh(l.sinkerWeight / H)),
  };
}

/** Angle from the stream at which weight and drag across the line balance: R sin² φ = w cos φ. */
export function criticalAngle(weightOverDrag: number): number {
  return Math.acos((Math.hypot(weightOverDrag, 2) - weightOverDrag) / 2);
}

/** A line whose sinker pulls with `tension` at the critical angle: straight, its tension growing by w sin φ a metre. */
export function critical(
  l: Omit<HeldLine, "sinkerWeight" | "sinkerDrag">,
  tension: number,
): HeldLine & LineAnswer {
  const angle = criticalAngle(l.weightPerMetre / normalForce(l));
  const top = tension + l.weightPerMetre * l.length * Math.sin(angle);
  return {
    ...l,
    sinkerWeight: tension * Math.sin(angle),
    sinkerDrag: tension * Math.cos(angle),
    pull: top * Math.cos(angle),
    load: top * Math.sin(angle),
    tension: top,
    drop: l.length * Math.sin(angle),
    downstream: l.length * Math.cos(angle),
  };
}

/** Drag on a metre of line square to the stream, in water of 1000 kg/m³. */
export function normalForce({
  relativeSpeed,
  diameter,
  normalDrag,
}: Omit<HeldLine, "sinkerWeight" | "sinkerDrag">): number {
  return 0.5 * 1000 * normalDrag * diameter * relativeSpeed ** 2;
}
