import { feet, feetPerSecond, type Plumbdrift, ProblemError, plumbdrift } from "@plumbdrift/client";

export const api: Plumbdrift = plumbdrift({ baseUrl: "http://localhost:8787" });
const water = { depth: feet(3), surfaceSpeed: feetPerSecond(3), bed: "cobble" } as const;

/** What it says, in the types of the document. */
export async function advice(): Promise<"ok" | 422> {
  try {
    const { setups } = await api.rankSetups({ water, top: 1 });
    const unit: "m" | "cm" | "mm" | "ft" | "in" | undefined = setups[0]?.tied.dropper.unit;
    return unit === undefined ? 422 : "ok";
  } catch (error) {
    if (error instanceof ProblemError && error.problem.code === "over-budget") return error.problem.status;
    throw error;
  }
}

// @ts-expect-error A speed is no depth; were the types missing, this would compile.
export const wrong: unknown = api.readColumn({ water: { ...water, depth: feetPerSecond(3) } });

// @ts-expect-error No such operation.
export const missing: unknown = api.noSuchOperation;
