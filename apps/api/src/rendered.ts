/** What is made from the contract and never changes. A build makes it once and keeps the text; in source form it is made when it is loaded. */

import { openApiDocument, openApiDocument30, type renderings } from "@plumbdrift/contract";
import { stringify } from "yaml";

const document = openApiDocument();

/** The document by the path that serves it. */
export const documents: { readonly [path in keyof typeof renderings]: string } = {
  "/openapi.json": JSON.stringify(document),
  "/openapi.yaml": stringify(document, { aliasDuplicateObjects: false, lineWidth: 0 }),
  "/openapi-3.0.json": JSON.stringify(openApiDocument30()),
};
