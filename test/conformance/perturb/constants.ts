/** The numeric constants of the core's relations: every number written in the rooms that hold relations, less what a reviewed rule leaves out. */
import { readdirSync, readFileSync } from "node:fs";
import ts from "typescript";
import { boundChecks, counted, methodFiles, methodNames, places, rooms, solvers, structure } from "./rule.js";

export interface Constant {
  /** `water/water.ts: 280.68 in waterViscosity`, with a count where it stands there more than once. */
  readonly name: string;
  readonly file: string;
  readonly start: number;
  readonly end: number;
}

/** Every constant of the relations under a folder of sources, in the order of files and lines. */
export function constantsOf(root: URL): readonly Constant[] {
  const counts = new Map<string, number>();
  return filesOf(root).flatMap((file) => {
    const source = ts.createSourceFile(
      file,
      readFileSync(new URL(file, root), "utf8"),
      ts.ScriptTarget.ES2022,
      true,
    );
    return literals(source).map((literal) => {
      const plain = `${file}: ${literal.getText()} in ${placeOf(literal)}`;
      const count = (counts.get(plain) ?? 0) + 1;
      counts.set(plain, count);
      const name = count === 1 ? plain : `${plain} (${count})`;
      return { name, file, start: literal.getStart(), end: literal.getEnd() };
    });
  });
}

function filesOf(root: URL): readonly string[] {
  const present = readdirSync(root);
  return rooms
    .filter((room) => present.includes(room))
    .flatMap((room) => readdirSync(new URL(room, root)).map((name) => `${room}/${name}`))
    .filter((file) => /^[^.]+\.ts$/.test(file) && !file.endsWith("/index.ts") && !(file in methodFiles));
}

function literals(source: ts.SourceFile): readonly ts.NumericLiteral[] {
  const found: ts.NumericLiteral[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isNumericLiteral(node) && !isLeftOut(node)) found.push(node);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function isLeftOut(literal: ts.NumericLiteral): boolean {
  if (structure.includes(Number(literal.text)) || ts.isLiteralTypeNode(literal.parent)) return true;
  if (/^[12]$/.test(literal.text) && isCount(literal)) return true;
  for (let node: ts.Node = literal; !ts.isSourceFile(node); node = node.parent) {
    if (isMethod(node, literal)) return true;
  }
  return false;
}

/** Whether a 1 or a 2 steps to a neighbouring place, or counts things. */
function isCount(literal: ts.NumericLiteral): boolean {
  const { parent } = literal;
  if (!ts.isBinaryExpression(parent)) return false;
  const sign = parent.operatorToken.getText();
  const beside = parent.left === literal ? parent.right : parent.left;
  const named = (names: readonly string[]): boolean =>
    names.includes(/\w+$/.exec(beside.getText().replace(/ \?\? 0\)$/, ""))?.[0] ?? "");
  if (/^([!=]==|>>)$/.test(sign)) return true;
  if (/^[<>]=?$/.test(sign)) return named(counted);
  return /^[+-]$/.test(sign) && parent.right === literal && named(places);
}

/** Whether a node on the way up from a literal says that the literal is no part of a relation. */
function isMethod(node: ts.Node, literal: ts.NumericLiteral): boolean {
  const { parent } = node;
  if (ts.isIfStatement(parent) && parent.expression === node && ts.isThrowStatement(bodyOf(parent)))
    return true;
  if (ts.isElementAccessExpression(parent) && parent.argumentExpression === node) return true;
  if (ts.isForStatement(parent) && parent.statement !== node) return true;
  if (ts.isCallExpression(parent) || ts.isNewExpression(parent)) {
    const called = parent.expression.getText().replace(/^.*\./, "");
    if (
      parent.expression !== node &&
      [...boundChecks, ...solvers].includes(called) &&
      !ts.isFunctionLike(node)
    )
      return true;
  }
  if (ts.isBinaryExpression(parent) && /^[<>]=?$/.test(parent.operatorToken.getText())) {
    if (Number(literal.text) <= 1e-6) return true;
  }
  return nameOf(node) !== null && (nameOf(node) ?? "") in methodNames;
}

/** What an `if` does, without its braces. */
function bodyOf({ thenStatement }: ts.IfStatement): ts.Statement {
  return (ts.isBlock(thenStatement) && thenStatement.statements[0]) || thenStatement;
}

function nameOf(node: ts.Node): string | null {
  const named = ts.isVariableDeclaration(node) || ts.isFunctionDeclaration(node);
  return named && node.name !== undefined ? node.name.getText() : null;
}

/** The outermost named thing that a literal stands in. */
function placeOf(literal: ts.NumericLiteral): string {
  let place = "the file";
  for (let node: ts.Node = literal; !ts.isSourceFile(node); node = node.parent) place = nameOf(node) ?? place;
  return place;
}
