/** What a file of packages/core/src may not do, read from its syntax tree. */
import ts from "typescript";

/** In import order: a room imports only from rooms before it. */
export const ROOMS: readonly string[] =
  "elementary units sources numerics water channel column forces tackle rig drift lie setup check outing".split(
    " ",
  );

const IMPURE = new Set(
  (
    "Date process fetch console crypto performance globalThis require " +
    "setTimeout setInterval setImmediate queueMicrotask"
  ).split(" "),
);

/** What IEEE 754 or ECMAScript defines to the last bit; `random` breaks another rule. */
const EXACT = new Set(
  "PI E LN2 LN10 LOG2E LOG10E SQRT2 SQRT1_2 abs sign sqrt min max round floor ceil trunc fround imul clz32 random".split(
    " ",
  ),
);

/** `path` is relative to packages/core/src: `water/density.ts`. */
export function violations(path: string, text: string): string[] {
  const found: string[] = [];
  const isTest = /\.(test|slow|nightly)\.ts$/.test(path);
  const folders = path.split("/").slice(0, -1);
  const room = folders[0];
  if (room !== undefined && !ROOMS.includes(room)) found.push(`no room is called ${room}`);
  if (!isTest && /@ts-(ignore|nocheck|expect-error)/.test(text)) found.push("switches the type checker off");

  const checkImport = (specifier: string) => {
    if (!specifier.startsWith(".")) return void (isTest || found.push(`imports the package ${specifier}`));
    const target = new URL(specifier, `file:///core/src/${path}`).pathname;
    const to = target.match(/^\/core\/src\/([^/]+)\//)?.[1];
    if (!target.startsWith("/core/src/")) found.push(`imports from outside src: ${specifier}`);
    else if (room === undefined || isTest) return;
    else if (to === undefined) found.push(`imports the root: ${specifier}`);
    else if (ROOMS.indexOf(to) > ROOMS.indexOf(room)) found.push(`${room} imports from ${to}, a later room`);
  };

  const visit = (node: ts.Node): void => {
    if (ts.isStringLiteral(node) && isModuleName(node)) checkImport(node.text);
    if (!isTest) found.push(...breaches(node, room));
    if (!isTest && !path.endsWith(".fixture.ts")) found.push(...inexact(node));
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true));
  return found;
}

function isModuleName({ parent }: ts.StringLiteral): boolean {
  if (ts.isImportDeclaration(parent) || ts.isExportDeclaration(parent)) return true;
  if (ts.isLiteralTypeNode(parent)) return ts.isImportTypeNode(parent.parent);
  return ts.isCallExpression(parent) && parent.expression.kind === ts.SyntaxKind.ImportKeyword;
}

function breaches(node: ts.Node, room: string | undefined): string[] {
  const text = node.getText();
  if (ts.isTypeAssertionExpression(node) || (ts.isAsExpression(node) && node.type.getText() !== "const"))
    return room === "units" ? [] : [`casts: ${text}`];
  if (node.kind === ts.SyntaxKind.AnyKeyword) return ["says any"];
  if (ts.isEnumDeclaration(node)) return [`enum ${node.name.text}`];
  if (ts.isExportAssignment(node) || node.kind === ts.SyntaxKind.DefaultKeyword) {
    return ts.isDefaultClause(node.parent) ? [] : ["default export"];
  }
  if (ts.isExportSpecifier(node) && node.name.text === "default") return ["default export"];
  if (!ts.isIdentifier(node) || isMemberName(node)) return [];
  if (IMPURE.has(node.text)) return [`is not pure: ${node.text}`];
  if (node.text !== "Math") return [];
  const isKnown = ts.isPropertyAccessExpression(node.parent) && node.parent.name.text !== "random";
  return isKnown ? [] : [`is not pure: ${node.parent.getText()}`];
}

/** Functions of `Math` and powers other than squares, which engines compute as they like: those of the room `elementary` are the same on all. */
function inexact(node: ts.Node): string[] {
  const isFunction =
    ts.isPropertyAccessExpression(node) && node.expression.getText() === "Math" && !EXACT.has(node.name.text);
  const isPower =
    ts.isBinaryExpression(node) &&
    node.operatorToken.kind === ts.SyntaxKind.AsteriskAsteriskToken &&
    node.right.getText() !== "2";
  return isFunction || isPower ? [`is not the same on every engine: ${node.getText()}`] : [];
}

/** `x.process` and `{ process: 1 }` name a member, not the global. */
function isMemberName(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.name === node;
  return (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) && parent.name === node;
}
