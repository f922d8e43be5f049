/** A bundler cuts its output by file, and an index joins all that it names again: these imports go past every index, to the file that makes what is imported. */

import { existsSync, readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import ts from "typescript";

/** What is read only when it is asked for stays in files of its own, and is imported as such. */
export const readLater: RegExp = /^\.\/(rendered|tool-server)\.js$/;

/** What a file of ours exports, by name. */
type Exports = ReadonlyMap<string, Made>;

interface Made {
  readonly file: string;
  readonly name: string;
}

const known = new Map<string, Exports>();

/** The text of a file of ours, with imports that go straight to where things are made. */
export function direct(text: string, path: string): string {
  const file = parse(text, path);
  const added: string[] = [];
  const spaces = new Map<string, Exports>();
  const kept = file.statements.filter((statement) => {
    const from = ts.isImportDeclaration(statement) ? fileNamed(statement, path) : undefined;
    const clause = ts.isImportDeclaration(statement) ? statement.importClause : undefined;
    if (from === undefined || clause?.namedBindings === undefined || isOfTypes(clause)) return true;
    if (ts.isNamespaceImport(clause.namedBindings)) {
      spaces.set(clause.namedBindings.name.text, exportsOf(from));
    } else {
      for (const { isTypeOnly, propertyName, name } of clause.namedBindings.elements) {
        if (!isTypeOnly) added.push(importOf(madeBy(from, (propertyName ?? name).text), name.text));
      }
    }
    return false;
  });
  const member = (node: ts.Node): ts.Node => {
    if (!ts.isPropertyAccessExpression(node) || !ts.isIdentifier(node.expression))
      return ts.visitEachChild(node, member, undefined);
    const space = node.expression.text;
    const made = spaces.get(space)?.get(node.name.text);
    if (made === undefined) return node;
    const local = `${space}_${node.name.text}`;
    added.push(importOf(made, local));
    return ts.factory.createIdentifier(local);
  };
  const statements = kept.map((statement) => member(statement) as ts.Statement);
  const body = ts.createPrinter().printFile(ts.factory.updateSourceFile(file, statements));
  return [...new Set(added), body].join("\n");
}

function importOf({ file, name }: Made, local: string): string {
  return `import { ${name} as ${local} } from ${JSON.stringify(file)};`;
}

function madeBy(file: string, name: string): Made {
  const made = exportsOf(file).get(name);
  if (made === undefined) throw new Error(`${file} exports no ${name}`);
  return made;
}

function exportsOf(path: string): Exports {
  const before = known.get(path);
  if (before !== undefined) return before;
  const made = new Map<string, Made>();
  known.set(path, made);
  const file = parse(readFileSync(path, "utf8"), path);
  const imported = new Map(file.statements.flatMap((statement) => importsOf(statement, path)));
  for (const statement of file.statements) {
    for (const [name, one] of namesOf(statement, path)) made.set(name, imported.get(one.name) ?? one);
  }
  return made;
}

/** What a statement exports. */
function namesOf(statement: ts.Statement, path: string): (readonly [string, Made])[] {
  const own = (name: ts.Node | undefined): (readonly [string, Made])[] =>
    name !== undefined && ts.isIdentifier(name) ? [[name.text, { file: path, name: name.text }]] : [];
  if (ts.isExportDeclaration(statement)) {
    const { exportClause: clause, isTypeOnly } = statement;
    const from = fileNamed(statement, path);
    if (isTypeOnly) return [];
    if (clause === undefined) return from === undefined ? [] : [...exportsOf(from)];
    if (!ts.isNamedExports(clause)) return [];
    return clause.elements.flatMap(({ isTypeOnly, propertyName, name }) => {
      if (isTypeOnly) return [];
      const inner = (propertyName ?? name).text;
      return [[name.text, from === undefined ? { file: path, name: inner } : madeBy(from, inner)] as const];
    });
  }
  if (!ts.canHaveModifiers(statement)) return [];
  const exported = ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
  if (exported !== true) return [];
  if (ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement)) return own(statement.name);
  if (!ts.isVariableStatement(statement)) return [];
  return statement.declarationList.declarations.flatMap(({ name }) => own(name));
}

/** What a statement imports, by local name. */
function importsOf(statement: ts.Statement, path: string): (readonly [string, Made])[] {
  if (!ts.isImportDeclaration(statement)) return [];
  const from = fileNamed(statement, path);
  const bindings = statement.importClause?.namedBindings;
  if (from === undefined || bindings === undefined || !ts.isNamedImports(bindings)) return [];
  if (statement.importClause !== undefined && isOfTypes(statement.importClause)) return [];
  const values = bindings.elements.filter(({ isTypeOnly }) => !isTypeOnly);
  return values.map(({ propertyName, name }) => [name.text, madeBy(from, (propertyName ?? name).text)]);
}

function isOfTypes({ phaseModifier }: ts.ImportClause): boolean {
  return phaseModifier === ts.SyntaxKind.TypeKeyword;
}

/** The file of ours that a statement names; nothing for a package of others. */
function fileNamed(statement: ts.ImportDeclaration | ts.ExportDeclaration, path: string): string | undefined {
  const { moduleSpecifier } = statement;
  if (moduleSpecifier === undefined || !ts.isStringLiteral(moduleSpecifier)) return undefined;
  const { text } = moduleSpecifier;
  if (text.startsWith("@plumbdrift/")) return sourceOf(text);
  const file = resolve(dirname(path), text.replace(/\.js$/, ".ts"));
  return text.startsWith(".") && !readLater.test(text) && existsSync(file) ? file : undefined;
}

/** The index behind the name of a package of ours, or of a room of it. */
export function sourceOf(module: string): string {
  const [, name = "", room = ""] = module.split("/");
  return resolve("../../packages", name, "src", room, "index.ts");
}

function parse(text: string, path: string): ts.SourceFile {
  return ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);
}
