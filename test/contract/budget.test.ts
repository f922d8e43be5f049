/** The work of a request is counted before computing, and what is computed is never more than was counted. */

import { createApp } from "@plumbdrift/api";
import { type Engine, engine } from "@plumbdrift/api/engine";
import * as contract from "@plumbdrift/contract";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Body, document, exampleOf, post } from "./api.js";
import { fits, largest } from "./arbitrary.js";
import { broken } from "./broken.js";
import { estimateOf, workShown } from "./work.js";

describe.each(contract.operations.map(({ id, path, cost }) => [id, path, cost] as const))(
  "%s",
  (id, path, cost) => {
    test("never does more than it counted, and never more than one call may do", async () => {
      const published = document.paths[path].post.requestBody.content["application/json"].schema;
      const example = exampleOf(path);
      let answered = 0;
      const check = async (body: Body): Promise<void> => {
        const reply = await post(path, body);
        if (reply.status === 422 && reply.body.code === "over-budget") {
          expect(reply.body.errors[0].path).toBe(cost.lessAt);
          return;
        }
        if (reply.status !== 200) return;
        answered++;
        const estimate = estimateOf(id, body);
        expect(workShown(id, reply.body, body)).toBeLessThanOrEqual(estimate);
        expect(estimate).toBeLessThanOrEqual(contract.MAX_WORK);
      };
      await check(example);
      await fc.assert(fc.asyncProperty(fits(published, true), check), { seed: 11, numRuns: 80 });
      expect(answered).toBeGreaterThan(0);
    });
  },
);

/** Requests that ask for more than one call may do. */
const over: Readonly<Record<string, (body: Body) => void>> = {
  driftRig: (b) => {
    b.timeStep = { value: 0.0005, unit: "s" };
  },
  holdRig: (b) => {
    b.points = 200;
    b.rig.sections = Array(10).fill(b.rig.sections[0]);
  },
  rankSetups: (b) => {
    b.top = 50;
    b.box = { ...smallBox(), nymphs: Array(200).fill(smallBox().nymphs[0]) };
  },
  adjustRig: (b) => {
    b.samples = 4000;
    b.box = {
      ...smallBox(),
      nymphs: Array(400).fill(smallBox().nymphs[0]),
      dries: Array(400).fill(smallBox().dries[0]),
    };
  },
  shiftFlow: (b) => {
    b.rank = true;
    b.top = 50;
    b.box = { ...smallBox(), nymphs: Array(400).fill({ size: 16 }) };
  },
  traceSurface: (b) => {
    b.reaches = Array(20).fill(b.reaches[0]);
    b.pointsPerReach = 2000;
  },
};

function smallBox(): Body {
  const { examples } = document.paths["/v1/setups"].post.requestBody.content["application/json"];
  return structuredClone(examples.smallBox.value.box);
}

const within = contract.operations.filter(({ id }) => !(id in over));

describe.each(Object.entries(over))("%s", (id, change) => {
  test("over budget: refused before computing, with estimate and limit", async () => {
    const { path = "", cost } = contract.operations.find((operation) => operation.id === id) ?? {};
    const body = exampleOf(path);
    change(body);
    const reply = await post(path, body, createApp(broken));
    expect(reply).toMatchObject({ status: 422, body: { code: "over-budget" } });
    const [{ path: blamed, expected, received }] = reply.body.errors;
    expect({ blamed, expected }).toEqual({ blamed: cost?.lessAt, expected: "at most 1000000 units of work" });
    expect(Number.parseInt(received, 10)).toBeGreaterThan(contract.MAX_WORK);
  });
});

describe.each(within.map((operation) => [operation.id, operation] as const))("%s", (_id, { path, cost }) => {
  const schema = document.paths[path].post.requestBody.content["application/json"].schema;
  const terms = cost.terms as unknown as readonly {
    readonly each: number;
    readonly of: (body: Body) => number;
  }[];
  const workOf = (body: Body): number =>
    terms.reduce((sum, { each, of }) => sum + each * of(body), contract.WORK_PER_CALL);
  const most = Math.max(...largest(schema).map(workOf));

  test("over budget: cannot happen, for the largest request of its schema is within", () => {
    expect(most).toBeGreaterThan(contract.WORK_PER_CALL);
    expect(most).toBeLessThanOrEqual(contract.MAX_WORK);
  });

  test("and no other request costs more than that one", () => {
    const costs = fc.property(fits(schema), (body) => workOf(body) <= most);
    fc.assert(costs, { seed: 12, numRuns: 200 });
  });
});

test("holding settles no more rigs than it counted", async () => {
  let compiled = 0;
  const holdRig: Engine["holdRig"] = (input) => {
    // a rig is compiled once for each settled state and each search, and its float is read twice more for what is said of it
    const rig = new Proxy(input.rig, {
      get: (target, key) => {
        if (key === "float") compiled++;
        return Reflect.get(target, key);
      },
    });
    return engine.holdRig({ ...input, rig });
  };
  const { status } = await post("/v1/drifts/held", exampleOf("/v1/drifts/held"), createApp({ holdRig }));
  expect(status).toBe(200);
  expect(compiled).toBeGreaterThan(9);
  expect(compiled).toBeLessThanOrEqual(3 * (9 + 3) + 2);
});
