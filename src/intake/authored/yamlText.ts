import { LineCounter, isMap, isScalar, parseDocument, visit, type Document } from 'yaml';
import { makeProblem } from '../../problems/makeProblem.ts';
import type { Problem } from '../../problems/problem.ts';
import { firstLine, placesOf, type PlaceOf } from './places.ts';
import { isBlock, type Block } from './tree.ts';
import { unseenIn, unseenProblem } from './unseenCharacters.ts';
import { yamlErrors } from './yamlErrors.ts';
import { yamlTraps } from './yamlTraps.ts';

/** Ten times what the longest report takes; the time to read it grows with the square. */
export const mostCharacters = 60_000;

interface YamlReading {
  /** The answers as typed; null when the text cannot be read as YAML. */
  readonly tree: Block | null;
  readonly placeOf: PlaceOf;
  readonly problems: readonly Problem[];
  /** The keys of a block in the order in which they stand (an object would put `10` before `alder`). */
  readonly keysInOrder: (key: string) => readonly string[];
}

/**
 * Reads YAML so that every scalar stays the text that was typed (`9.0`, `010`, `no`, dates). Anchors, aliases, tags
 * and repeated keys are refused. `typed` must begin at the first line of `file`.
 */
export function readYaml(file: string, typed: string): YamlReading {
  if (last?.file !== file || last.typed !== typed) last = { file, typed, reading: parsed(file, typed) };
  return last.reading;
}

/** What was read last: who looks at an unfinished draft asks for its answers six times in a row. */
let last: { readonly file: string; readonly typed: string; readonly reading: YamlReading } | null = null;

function parsed(file: string, typed: string): YamlReading {
  const text = typed.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const unreadable = (problems: readonly Problem[]): YamlReading => ({
    tree: null,
    placeOf: firstLine(file),
    problems,
    keysInOrder: () => [],
  });
  if (text.length > mostCharacters) {
    return unreadable([
      makeProblem(
        'too-long',
        { file, line: 1, column: 1 },
        {
          expected: `at most ${mostCharacters} characters of answers`,
          found: `${text.length} characters`,
          cure: 'Put what is long under the answers, into the narrative.',
        },
      ),
    ]);
  }
  const pasted = pastedBlanks(file, text);
  if (pasted !== null) return unreadable([pasted]);
  const lines = new LineCounter();
  try {
    const document = parseDocument(text, {
      lineCounter: lines,
      schema: 'failsafe',
      uniqueKeys: true,
      prettyErrors: false,
      logLevel: 'error',
    });
    const traps = yamlTraps(text, document, lines);
    const trapped = new Set(traps.map(({ line }) => line));
    // A comment that swallows a bracket shows up twice; the trap names the cause.
    const errors = yamlErrors(text, document, lines);
    const troubles = [...traps, ...errors.filter(({ line }) => !trapped.has(line))];
    const problems = troubles.map(({ kind, line, column, expected, found, cure }) =>
      makeProblem(kind, { file, line, column }, { expected, found, cure }),
    );
    problems.push(...unseenValues(file, document, lines));
    if ([...traps, ...errors].some(({ fatal }) => fatal)) return unreadable(problems);
    const placeOf = placesOf(file, document, lines);
    if (document.contents === null || isBlank(document.contents))
      return { tree: {}, placeOf, problems, keysInOrder: () => [] };
    const tree: unknown = document.toJS({ maxAliasCount: 0 });
    if (!isBlock(tree)) {
      return unreadable([
        ...problems,
        makeProblem('value-invalid', placeOf([]), {
          expected: 'answers, each as a key, a colon and a value',
          found: Array.isArray(tree) ? 'a list' : String(tree),
          cure: 'Write one answer a line, such as "title: Three driver heads, one shaft".',
        }),
      ]);
    }
    const keysInOrder = (key: string): readonly string[] => {
      const block = document.get(key, true);
      return isMap(block) ? block.items.map((item) => String(item.key)) : [];
    };
    return { tree, placeOf, problems, keysInOrder };
  } catch {
    // The parser recurses: thousands of brackets inside one another exhaust the stack.
    return unreadable([
      makeProblem(
        'yaml-syntax',
        { file, line: 1, column: 1 },
        {
          expected: 'a few answers inside one another',
          found: 'brackets or indentation nested too deeply to read',
          cure: 'Remove the surplus brackets; no answer is nested more than five deep.',
        },
      ),
    ]);
  }
}

/** Blanks that do not count as such, at the start of a line: they come with what is copied from a page or a mail. */
const pastedStart = /^ *[\t ]*([\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]+)[^\n]*/gmu;

function pastedBlanks(file: string, text: string): Problem | null {
  const found = [...text.matchAll(pastedStart)];
  const [first] = found;
  if (first === undefined) return null;
  const line = text.slice(0, first.index).split('\n').length;
  const column = first[0].indexOf(first[1] ?? '') + 1;
  const blanks = (first[1] ?? '').length;
  const more = found.length === 1 ? '' : ` So begin ${found.length} lines.`;
  return makeProblem(
    'yaml-syntax',
    { file, line, column },
    {
      expected: 'blanks as the space bar types them at the start of the line',
      found: `${blanks === 1 ? 'a non-breaking blank' : `${blanks} non-breaking blanks`} before ${first[0].trim().slice(0, 60)}`,
      cure: `Delete them and type blanks in their place: they come with text that is pasted from a page, a mail or a word processor.${more}`,
    },
  );
}

/** Values and keys with a character that cannot be seen, escapes in quotes included. */
function unseenValues(file: string, document: Document, lines: LineCounter): readonly Problem[] {
  const found: Problem[] = [];
  visit(document, {
    Scalar(_, node) {
      const unseen = unseenIn(String(node.value ?? ''));
      if (unseen === null) return;
      const { line, col } = lines.linePos(node.range?.[0] ?? 0);
      found.push(unseenProblem({ file, line: Math.max(line, 1), column: Math.max(col, 1) }, unseen.name));
    },
  });
  return found;
}

const isBlank = (contents: unknown): boolean => isScalar(contents) && contents.value === '';
