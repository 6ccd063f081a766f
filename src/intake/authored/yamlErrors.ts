import { isAlias, visit, type Document, type LineCounter } from 'yaml';
import { specialStart, yamlErrorWords, type Where } from './yamlErrorWords.ts';
import type { YamlTrouble } from './yamlTrouble.ts';

// Bytes that were never meant to be YAML give an error a character.
const mostErrors = 100;

/** YAML's own errors, rewritten: one a line, since the first usually brings the others with it. */
export function yamlErrors(text: string, document: Document, lines: LineCounter): YamlTrouble[] {
  const rows = text.split(/\r\n|\n|\r/);
  const whereIs = (offset: number): Where => {
    const { line, col } = lines.linePos(Math.max(0, Math.min(offset, text.length - 1)));
    return { line, column: Math.max(col, 1), row: rows[line - 1] ?? '' };
  };
  const troubles: YamlTrouble[] = [];
  const linesSeen = new Set<number>();
  const add = (trouble: YamlTrouble): void => {
    if (!linesSeen.has(trouble.line)) troubles.push(trouble);
    linesSeen.add(trouble.line);
  };
  visit(document, {
    Node(_, node) {
      const start = node.range?.[0] ?? 0;
      if (isAlias(node)) add(specialStart(whereIs(start)));
      else if (node.anchor !== undefined) {
        // The range of a node begins after its anchor, which may stand on an earlier line.
        add(specialStart(whereIs(text.lastIndexOf('&', start))));
      }
    },
  });
  const seen = new Set<number>();
  for (const { code, pos } of [...document.errors, ...document.warnings].slice(0, mostErrors)) {
    if (seen.has(pos[0])) continue;
    seen.add(pos[0]);
    add(yamlErrorWords(code, whereIs(pos[0]), { rows, whereIs, document, offset: pos[0] }));
  }
  return troubles.toSorted((a, b) => a.line - b.line || a.column - b.column);
}
