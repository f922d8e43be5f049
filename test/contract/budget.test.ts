/** The work of a request is counted before computing, and what is computed is never more than was counted. */

import { createApp, engine } from "@plumbdrift/api";
import * as contract from "@plumbdrift/contract";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Body, document, exampleOf, post } from "./api.js";
import { fits } from "./arbitrary.js";
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

describe("a request beyond its budget", () => {
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
      b.box.nymphs = Array(200).fill(b.box.nymphs[0]);
    },
    shiftFlow: (b) => {
      b.rank = true;
      b.top = 50;
      b.box = { ...smallBox().box, nymphs: Array(400).fill({ size: 16 }) };
    },
    traceSurface: (b) => {
      b.reaches = Array(20).fill(b.reaches[0]);
      b.pointsPerReach = 2000;
    },
  };

  test.each(Object.entries(over))(
    "%s is refused before computing, with estimate and limit",
    async (id, change) => {
      const { path = "", cost } = contract.operations.find((operation) => operation.id === id) ?? {};
      const body = id === "rankSetups" ? smallBox() : exampleOf(path);
      change(body);
      const reply = await post(path, body, createApp(broken));
      expect(reply).toMatchObject({ status: 422, body: { code: "over-budget" } });
      const [{ path: blamed, expected, received }] = reply.body.errors;
      expect({ blamed, expected }).toEqual({
        blamed: cost?.lessAt,
        expected: "at most 1000000 units of work",
      });
      expect(Number.parseInt(received, 10)).toBeGreaterThan(contract.MAX_WORK);
    },
  );

  const smallBox = (): Body =>
    structuredClone(
      document.paths["/v1/setups"].post.requestBody.content["application/json"].examples.smallBox.value,
    );

  test("the other operations cannot ask for so much: their schemas end before", () => {
    const bounded = contract.operations.map(({ id }) => id).filter((id) => !(id in over));
    const greatest: Readonly<Record<string, readonly number[]>> = {
      readColumn: [201],
      settleRig: [10],
      weighTakes: [1],
      checkRig: [41],
      adjustRig: [6000 + 5 * 63, 15],
      carryFlow: [300],
      findDepth: [300],
      readEnergy: [300],
      jumpFlow: [300],
      spreadFlow: [300, 500],
      measureDischarge: [200],
      fitRating: [300, 200],
      scaleStream: [300, 200],
      estimateResistance: [50],
    };
    for (const id of bounded) {
      const { terms = [] } = contract.operations.find((one) => one.id === id)?.cost ?? {};
      const most = terms.reduce((sum, { each }, i) => sum + each * greatest[id]![i]!, 1000);
      expect(most).toBeLessThanOrEqual(contract.MAX_WORK);
    }
  });
});

test("holding settles no more rigs than it counted", async () => {
  let compiled = 0;
  const holdRig: typeof engine.holdRig = (input) => {
    // a rig is compiled once for each settled state and each search, and its float is read twice more for what is said of it
    const rig = new Proxy(input.rig, {
      get: (target, key) => {
        if (key === "float") compiled++;
        return Reflect.get(target, key);
      },
    });
    return engine.holdRig({ ...input, rig });
  };
  const { status } = await post(
    "/v1/drifts/held",
    exampleOf("/v1/drifts/held"),
    createApp({ ...engine, holdRig }),
  );
  expect(status).toBe(200);
  expect(compiled).toBeGreaterThan(9);
  expect(compiled).toBeLessThanOrEqual(3 * (9 + 3) + 2);
});
