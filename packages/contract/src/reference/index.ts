/** What can be looked up. One table makes the paths, the document and the answers. */

import { z } from "@hono/zod-openapi";
import { RelationSchema, RelationsSchema, relations } from "../relations.js";
import { LimitsSchema, limits } from "./limits.js";
import { ExplainedProblemSchema, ExplainedProblemsSchema, explainedProblems } from "./problems.js";
import { tackleTable, tackleTables } from "./tackle.js";
import { TackleSchema } from "./tackle-schema.js";
import { explainedDimensions, UnitsPageSchema } from "./units.js";

export interface Reference {
  readonly id: string;
  readonly path: string;
  readonly summary: string;
  readonly description: string;
  readonly schema: z.ZodType;
  /** What it answers: where the path has a key, nothing to one that is none. */
  readonly read: (key: string) => object | undefined;
  /** What the document shows, where the whole would be too long. */
  readonly example: () => object | undefined;
  readonly keyed?: Keyed;
}

interface Keyed {
  /** What a key names. */
  readonly noun: string;
  readonly keys: readonly string[];
  /** The path that lists the keys. */
  readonly list: string;
}

const keysOf = <T, K extends keyof T>(items: readonly T[], key: K): readonly T[K][] =>
  items.map((item) => item[key]);

export const references: readonly Reference[] = [
  {
    id: "listRelations",
    path: "/v1/relations",
    summary: "Which relations does the engine rest on?",
    description: "Every source by key, the ranges it was published for, and where it is used.",
    schema: RelationsSchema,
    read: () => ({ relations: relations() }),
    example: () => ({ relations: relations().filter(({ key }) => key === "Chow1959") }),
  },
  {
    id: "readRelation",
    path: "/v1/relations/{key}",
    summary: "What is behind a key?",
    description: "The keys are those of meta.relations and of caveats.",
    schema: RelationSchema,
    read: (key) => relations().find((relation) => relation.key === key),
    example: () => relations().find(({ key }) => key === "Chow1959"),
    keyed: { noun: "relation", keys: keysOf(relations(), "key"), list: "/v1/relations" },
  },
  {
    id: "listProblems",
    path: "/v1/problems",
    summary: "What can go wrong?",
    description: "Every problem code with its status and what to do about it.",
    schema: ExplainedProblemsSchema,
    read: () => ({ problems: explainedProblems() }),
    example: () => ({ problems: explainedProblems() }),
  },
  {
    id: "readProblem",
    path: "/v1/problems/{code}",
    summary: "What does a problem code mean?",
    description: "The type of a problem document points here.",
    schema: ExplainedProblemSchema,
    read: (code) => explainedProblems().find((problem) => problem.code === code),
    example: () => explainedProblems().find(({ code }) => code === "over-budget"),
    keyed: { noun: "problem", keys: keysOf(explainedProblems(), "code"), list: "/v1/problems" },
  },
  {
    id: "readUnits",
    path: "/v1/units",
    summary: "Which units may a quantity say?",
    description: "Every dimension with its units and their exact factors.",
    schema: UnitsPageSchema,
    read: () => ({ dimensions: explainedDimensions() }),
    example: () => ({ dimensions: explainedDimensions().filter(({ dimension }) => dimension === "length") }),
  },
  {
    id: "readLimits",
    path: "/v1/limits",
    summary: "How much may one call ask for?",
    description: "Every ceiling, and what each operation costs in units of work, counted before computing.",
    schema: LimitsSchema,
    read: limits,
    example: () => ({
      ...limits(),
      operations: limits().operations.filter(({ operation }) => operation === "driftRig"),
    }),
  },
  {
    id: "listTackle",
    path: "/v1/tackle",
    summary: "Which tables of tackle are there?",
    description: "Their names: look each up by its own.",
    schema: z
      .strictObject({ tables: z.array(z.string()).openapi({ description: "Names of tables." }) })
      .openapi("TackleTables", { description: "The names of the tables." }),
    read: () => ({ tables: tackleTables }),
    example: () => ({ tables: tackleTables }),
  },
  {
    id: "readTackle",
    path: "/v1/tackle/{table}",
    summary: "What does a table of tackle hold?",
    description:
      "The tables of common practice that bodies are built from, with their basis and spread. A measured value takes the place of any.",
    schema: TackleSchema,
    read: tackleTable,
    example: () => tackleTable("dries"),
    keyed: { noun: "table", keys: tackleTables, list: "/v1/tackle" },
  },
];
