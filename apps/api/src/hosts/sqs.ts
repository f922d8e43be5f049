/** For AWS Lambda fed by a standard SQS queue, with ReportBatchItemFailures: only what failed comes again. */

import { callback } from "./callback.js";
import { answerMessage, type Deliver } from "./message.js";

/** What is read of an event. */
export interface SqsEvent {
  readonly Records: readonly { readonly messageId: string; readonly body: string }[];
}

export interface SqsBatchResponse {
  readonly batchItemFailures: readonly { readonly itemIdentifier: string }[];
}

/** The handler for a way of delivering. Messages are worked off one after another: they share one processor. */
export function consumer(deliver: Deliver): (event: SqsEvent) => Promise<SqsBatchResponse> {
  return async ({ Records }) => {
    const batchItemFailures: { itemIdentifier: string }[] = [];
    for (const { messageId, body } of Records) {
      try {
        await deliver(await answerMessage(parsed(body), messageId));
      } catch (error) {
        console.error(messageId, error);
        batchItemFailures.push({ itemIdentifier: messageId });
      }
    }
    return { batchItemFailures };
  };
}

/** What is not JSON stays text, which no message is. */
function parsed(body: string): unknown {
  try {
    return JSON.parse(body);
  } catch {
    return body;
  }
}

/** Delivers to RESULTS_URL, with RESULTS_AUTHORIZATION as the header of that name. */
export const handler = (event: SqsEvent): Promise<SqsBatchResponse> => {
  const { RESULTS_URL, RESULTS_AUTHORIZATION } = process.env;
  if (!RESULTS_URL) throw new Error("RESULTS_URL must be the address that results are posted to");
  return consumer(callback(RESULTS_URL, RESULTS_AUTHORIZATION))(event);
};
