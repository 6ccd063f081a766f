import { isCollection, isMap, isScalar, visit, type Document, type LineCounter, type Node } from 'yaml';
import { inQuotes, type YamlTrouble } from './yamlTrouble.ts';

// "# " opens a comment; "#2" and "# 2" are far more often part of a name.
const gluedComment = /^([ \t]*)(#(?:[^\s#][^\r\n]*|[ \t]*\d+[ \t]*(?=[\r\n]|$)))/;

/** What YAML reads without a complaint although the shop meant something else. */
export function yamlTraps(text: string, document: Document, lines: LineCounter): YamlTrouble[] {
  const traps: YamlTrouble[] = [];
  const trap = (offset: number, rest: Omit<YamlTrouble, 'line' | 'column'>): void => {
    const { line, col } = lines.linePos(offset);
    traps.push({ line, column: col, ...rest });
  };
  const starts = (node: unknown): number => (node as Node | null)?.range?.[0] ?? 0;
  visit(document, {
    Pair(_, pair, ancestors) {
      const parent = ancestors.at(-1);
      if (!isScalar(pair.key)) {
        trap(starts(pair.key), {
          kind: 'yaml-syntax',
          fatal: true,
          expected: 'a key of plain words before the colon',
          found: 'brackets before the colon',
          cure: 'Write a plain word as the key, or put the whole value in quotes.',
        });
      } else if (
        pair.value === null &&
        isMap(parent) &&
        (parent.flow === true || document.errors.length === 0)
      ) {
        trap(starts(pair.key), {
          kind: 'yaml-syntax',
          fatal: false,
          expected: 'a key, a colon and a value',
          found: String(pair.key.value),
          cure: 'Add a colon and an answer. Inside { } a comma ends a value, so put a value that holds a comma in quotes.',
        });
      }
    },
    Scalar(key, node, ancestors) {
      if (key === 'key' || node.type !== 'PLAIN' || node.range == null) return;
      const [start, end] = node.range;
      const cut = gluedComment.exec(text.slice(end, end + 2000));
      if (cut === null || cut[2] === undefined) return;
      if (cut[1] === '' && !/[\s:]/.test(text[end - 1] ?? '')) return;
      const inBrackets = ancestors.some((above) => isCollection(above) && above.flow === true);
      const comment = (inBrackets ? cut[2].replace(/[,}\]].*$/s, '') : cut[2]).trim();
      const meant = `${String(node.value ?? '')} ${comment}`.trim();
      trap(start, {
        kind: 'comment-cuts-value',
        fatal: false,
        expected: 'a value that is read whole: YAML takes everything from a # after a blank for a comment',
        found: meant,
        cure: `Put the value in quotes: ${inQuotes(meant)}. If a comment is meant, put a blank after its #.`,
      });
    },
  });
  return traps;
}
