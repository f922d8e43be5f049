/** What is made from the contract and never changes. A build makes it once and keeps the text; in source form it is made when it is loaded. */

import { openApiDocument } from "@plumbdrift/contract";

export const openApiJson: string = JSON.stringify(openApiDocument());
