/** What is made from the contract and never changes. A build makes it once and keeps the text; in source form it is made when it is loaded. */

import { openApiDocument, openApiDocument30, references, type renderings } from "@plumbdrift/contract";
import { stringify } from "yaml";

const document = openApiDocument();

/** The document by the path that serves it. */
export const documents: { readonly [path in keyof typeof renderings]: string } = {
  "/openapi.json": JSON.stringify(document),
  "/openapi.yaml": stringify(document, { aliasDuplicateObjects: false, lineWidth: 0 }),
  "/openapi-3.0.json": JSON.stringify(openApiDocument30()),
};

/** What can be looked up, by the id of a reference and the key; the key of what has none is empty. */
export const lookedUp: Readonly<Record<string, Readonly<Record<string, object | undefined>>>> =
  Object.fromEntries(
    references.map(({ id, keyed, read }) => [
      id,
      Object.fromEntries((keyed?.keys ?? [""]).map((key) => [key, read(key)])),
    ]),
  );
