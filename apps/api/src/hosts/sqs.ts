/** For AWS Lambda fed by a standard SQS queue, with ReportBatchItemFailures: only what failed comes again. */

import { parsed } from "../sent.js";
import { callback } from "./callback.js";
import { answerMessage, type Deliver, refused } from "./message.js";

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
        const sent = parsed(body);
        await deliver(
          sent.ok ? await answerMessage(sent.value, messageId) : refused(messageId, sent.problem),
        );
      } catch (error) {
        console.error(messageId, error);
        batchItemFailures.push({ itemIdentifier: messageId });
      }
    }
    return { batchItemFailures };
  };
}

/** Delivers to RESULTS_URL, with RESULTS_AUTHORIZATION as the header of that name. */
export const handler = (event: SqsEvent): Promise<SqsBatchResponse> => {
  const { RESULTS_URL, RESULTS_AUTHORIZATION } = process.env;
  if (!RESULTS_URL) throw new Error("RESULTS_URL must be the address that results are posted to");
  return consumer(callback(RESULTS_URL, RESULTS_AUTHORIZATION))(event);
};
