/** A file of the contract without what only the document reads. */

import ts from "typescript";

/** Its text with plain zod, and of that what it calls. */
export function shortened(text: string): string {
  return withPlainZod(withoutDescriptions(text));
}

/** What an operation, a problem or a rendering tells the document alone, and a reference the texts that are rendered once. */
const told: ReadonlyMap<string, readonly string[]> = new Map([
  ["operation", ["summary", "description", "examples"]],
  ["problemKinds", ["meaning"]],
  ["renderings", ["id", "summary"]],
  ["references", ["summary", "description", "schema", "read", "example", "keys"]],
]);

/** `schema.openapi(…)` is a copy with a description: without it a copy is left, where one is needed. What is made while the module loads is marked as free
 *  of effects, so that what nobody uses of it can go. */
function withoutDescriptions(text: string): string {
  const file = ts.createSourceFile("contract.ts", text, ts.ScriptTarget.ES2022, true);
  const lessen = (node: ts.Node): ts.Node => {
    if (ts.isFunctionLike(node) || ts.isClassLike(node)) return deferred(node);
    const left = ts.visitEachChild(shorter(node), lessen, undefined);
    return ts.isCallExpression(left) || ts.isNewExpression(left) ? pure(left) : left;
  };
  const deferred = (node: ts.Node): ts.Node => ts.visitEachChild(shorter(node), deferred, undefined);
  const statements = file.statements.map((statement) => lessen(statement) as ts.Statement);
  return ts.createPrinter({ removeComments: false }).printFile(ts.factory.updateSourceFile(file, statements));
}

function shorter(node: ts.Node): ts.Node {
  if (ts.isCallExpression(node)) {
    const { expression: called, arguments: given } = node;
    if (ts.isPropertyAccessExpression(called) && called.name.text === "openapi") {
      return copied(called.expression);
    }
    const kept = given.map((argument) => without(nameOf(called), argument));
    return ts.factory.updateCallExpression(node, called, undefined, kept);
  }
  if (!ts.isVariableDeclaration(node) || node.initializer === undefined) return node;
  const kept = without(nameOf(node.name), node.initializer);
  return ts.factory.updateVariableDeclaration(node, node.name, undefined, undefined, kept);
}

/** What is kept beside a schema is kept by its identity, so a schema with a name is copied. What a method of zod answers is new. */
function copied(schema: ts.Expression): ts.Expression {
  if (ts.isCallExpression(schema) && ts.isPropertyAccessExpression(schema.expression)) return schema;
  return ts.factory.createCallExpression(
    ts.factory.createPropertyAccessExpression(schema, "clone"),
    undefined,
    [],
  );
}

function nameOf(node: ts.Node): string {
  return ts.isIdentifier(node) ? node.text : "";
}

/** An expression whose objects lack what is told of a name. */
function without(name: string, expression: ts.Expression): ts.Expression {
  const keys = told.get(name);
  if (keys === undefined) return expression;
  const visit = (node: ts.Node): ts.Node => {
    if (ts.isFunctionLike(node)) return node;
    if (!ts.isObjectLiteralExpression(node)) return ts.visitEachChild(node, visit, undefined);
    const kept = node.properties.filter(({ name }) => !(name && keys.includes(nameOf(name))));
    return ts.visitEachChild(ts.factory.updateObjectLiteralExpression(node, kept), visit, undefined);
  };
  return ts.visitNode(expression, visit) as ts.Expression;
}

function pure(node: ts.Node): ts.Node {
  return ts.addSyntheticLeadingComment(node, ts.SyntaxKind.MultiLineCommentTrivia, " @__PURE__ ");
}

/** A namespace lets the bundler see which of zod's functions are called. */
function withPlainZod(text: string): string {
  return text.replace(/import \{ z(?: as (z\d+))? \} from "@hono\/zod-openapi";/g, (_, name = "z") => {
    return `import * as ${name} from "zod";`;
  });
}
