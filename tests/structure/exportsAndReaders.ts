import { dirname, resolve } from 'node:path';
import ts from 'typescript';
import { codeOf } from './codeOf.ts';

/** What a source file gives to others and takes from them. */
export interface ExportsAndReads {
  readonly exported: readonly string[];
  readonly reads: readonly Read[];
}

export interface Read {
  /** The file that is read, with its whole path. */
  readonly file: string;
  /** Which of its exports; `*` where a whole module is handed over. */
  readonly name: string;
}

const known = new Map<string, ExportsAndReads>();

/** The exports of a TypeScript or Astro file, and every export of other files that it imports; each file is read once. */
export function exportsAndReads(file: string): ExportsAndReads {
  const before = known.get(file);
  if (before !== undefined) return before;
  const found = exportsAndReadsOf(file);
  known.set(file, found);
  return found;
}

function exportsAndReadsOf(file: string): ExportsAndReads {
  const exported: string[] = [];
  const reads: Read[] = [];
  for (const code of codeOf(file)) {
    const source = ts.createSourceFile(file, code, ts.ScriptTarget.ESNext);
    for (const statement of source.statements) {
      exported.push(...exportedBy(statement));
      reads.push(...readBy(statement, dirname(file)));
    }
    // A module that is loaded late, named as a type, or started by its address hands over all that it has.
    for (const [, path = ''] of code.matchAll(
      /\bimport\(\s*['"](\.[^'"]+)['"]|new URL\(\s*['"](\.[^'"]+)['"]/g,
    ))
      reads.push({ file: resolve(dirname(file), path), name: '*' });
    for (const [, path = ''] of code.matchAll(/\bmoduleFile\(\s*'([^']+)'/g))
      reads.push({ file: resolve('src', path), name: '*' });
  }
  return { exported, reads };
}

function exportedBy(statement: ts.Statement): readonly string[] {
  if (ts.isExportDeclaration(statement)) return namesIn(statement.exportClause, 'name');
  if (ts.isExportAssignment(statement)) return ['default'];
  const modifiers = ts.canHaveModifiers(statement) ? (ts.getModifiers(statement) ?? []) : [];
  const has = (kind: ts.SyntaxKind): boolean => modifiers.some((modifier) => modifier.kind === kind);
  if (!has(ts.SyntaxKind.ExportKeyword)) return [];
  if (has(ts.SyntaxKind.DefaultKeyword)) return ['default'];
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.flatMap(({ name }) => boundNames(name));
  const { name } = statement as ts.Statement & { readonly name?: ts.Identifier };
  return name === undefined ? [] : [name.text];
}

function boundNames(name: ts.BindingName): readonly string[] {
  if (ts.isIdentifier(name)) return [name.text];
  return name.elements.flatMap((element) =>
    ts.isOmittedExpression(element) ? [] : boundNames(element.name),
  );
}

function readBy(statement: ts.Statement, folder: string): readonly Read[] {
  if (!ts.isImportDeclaration(statement) && !ts.isExportDeclaration(statement)) return [];
  const from = statement.moduleSpecifier;
  if (from === undefined || !ts.isStringLiteral(from) || !from.text.startsWith('.')) return [];
  const file = resolve(folder, from.text);
  const names = ts.isExportDeclaration(statement)
    ? namesIn(statement.exportClause, 'propertyName')
    : [
        ...(statement.importClause?.name === undefined ? [] : ['default']),
        ...namesIn(statement.importClause?.namedBindings, 'propertyName'),
      ];
  return names.map((name) => ({ file, name }));
}

function namesIn(
  bindings: ts.NamedImportBindings | ts.NamedExportBindings | undefined,
  which: 'name' | 'propertyName',
): readonly string[] {
  if (bindings === undefined) return [];
  if (!ts.isNamedImports(bindings) && !ts.isNamedExports(bindings)) return ['*'];
  return bindings.elements.map(
    (element) => (which === 'name' ? element.name : (element.propertyName ?? element.name)).text,
  );
}
