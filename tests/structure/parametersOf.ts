import ts from 'typescript';
import { codeOf } from './codeOf.ts';

/** A function that has a name, and how many parameters it takes. */
export interface NamedFunction {
  readonly name: string;
  readonly parameters: number;
}

/**
 * The functions of a TypeScript or Astro file, inner ones too, that bear a name of their own: declared, or kept in a
 * constant or a property. One that is only handed over takes what its taker gives it.
 */
export function namedFunctions(file: string): readonly NamedFunction[] {
  const found: NamedFunction[] = [];
  for (const code of codeOf(file)) {
    const source = ts.createSourceFile(file, code, ts.ScriptTarget.ESNext, true);
    const visit = (node: ts.Node): void => {
      const name = ts.isFunctionLike(node) ? nameOf(node) : null;
      if (ts.isFunctionLike(node) && name !== null) found.push({ name, parameters: node.parameters.length });
      ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return found;
}

function nameOf(node: ts.SignatureDeclaration): string | null {
  if (node.name !== undefined) return node.name.getText();
  const { parent } = node;
  return ts.isVariableDeclaration(parent) || ts.isPropertyAssignment(parent) ? parent.name.getText() : null;
}
