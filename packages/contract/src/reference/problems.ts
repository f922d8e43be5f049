/** What each problem code means. */

import { z } from "@hono/zod-openapi";
import { type ProblemCode, problemCodes, problemKinds } from "../problems.js";
import { type Strict, strict } from "../quantity/wire.js";

export interface ExplainedProblem {
  readonly code: ProblemCode;
  readonly type: string;
  readonly status: number;
  readonly title: string;
  readonly meaning: string;
}

interface ExplainedProblems {
  readonly problems: readonly ExplainedProblem[];
}

export const ExplainedProblemSchema: Strict<ExplainedProblem> = strict<ExplainedProblem>({
  code: z.enum(problemCodes).openapi({ description: "Names the kind for ever." }),
  type: z.string().openapi({ description: "URI reference of the kind of problem: this page." }),
  status: z.number().int().min(400).max(599).openapi({ description: "The status of HTTP." }),
  title: z.string().openapi({ description: "The kind of problem in words." }),
  meaning: z.string().openapi({ description: "What it means and what to do about it." }),
}).openapi("ExplainedProblem", { description: "A kind of problem." });

export const ExplainedProblemsSchema: Strict<ExplainedProblems> = strict<ExplainedProblems>({
  problems: z.array(ExplainedProblemSchema).openapi({ description: "In the order of their statuses." }),
}).openapi("ExplainedProblems", { description: "Every kind of problem." });

export function explainedProblems(): readonly ExplainedProblem[] {
  return problemCodes.map((code) => ({ code, type: `/v1/problems/${code}`, ...problemKinds[code] }));
}
