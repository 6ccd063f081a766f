import { visit, type Document, type ErrorCode } from 'yaml';
import { inQuotes, type YamlTrouble } from './yamlTrouble.ts';

export interface Where {
  readonly line: number;
  readonly column: number;
  /** The line as it stands. */
  readonly row: string;
}

interface Surroundings {
  readonly rows: readonly string[];
  readonly whereIs: (offset: number) => Where;
  readonly document: Document;
  readonly offset: number;
}

const trouble = (at: Where, expected: string, found: string, cure: string): YamlTrouble => ({
  kind: 'yaml-syntax',
  fatal: true,
  line: at.line,
  column: at.column,
  expected,
  found: found.trim(),
  cure,
});

/** `key: value` of a line, whatever it is indented by or listed as; null where there is no such thing. */
function keyAndValue(row: string): { readonly key: string; readonly value: string } | null {
  const parts = /^[\s-]*([^\s:][^:]*):[ \t]+(.*?)[ \t]*$/.exec(row);
  return parts === null ? null : { key: parts[1] ?? '', value: parts[2] ?? '' };
}

/** From a column on to the end of the value: in brackets to the next comma or bracket. */
function valueFrom({ row, column }: Where): string {
  const rest = row.slice(column - 1);
  const inBrackets = /[{[]/.test(row.slice(0, column - 1));
  return (inBrackets ? /^[^,}\]]*/.exec(rest)?.[0] : rest)?.trim() ?? '';
}

/** A value whose first character means something else to YAML. */
export function specialStart(at: Where): YamlTrouble {
  const value = valueFrom(at);
  return trouble(
    at,
    `a value in quotes, since YAML reads a ${value.slice(0, 1)} at its start as a sign of its own`,
    value,
    `Put the value in quotes: ${inQuotes(value)}.`,
  );
}

function colonInValue(at: Where, value: string): YamlTrouble {
  return trouble(
    at,
    'a value without ": " in it, or a value in quotes',
    value,
    `Put the value in quotes: ${inQuotes(value)}.`,
  );
}

/** The line above that stands too far to the left between lines of one block; the parser stumbles only behind it. */
function tooFarLeft(at: Where, rows: readonly string[]): YamlTrouble | null {
  const indent = (row: string): number => row.length - row.trimStart().length;
  const above = rows
    .slice(0, at.line - 1)
    .map((row, index): Where => ({ row, line: index + 1, column: 1 }))
    .filter(({ row }) => /^\s*[^\s#]/.test(row));
  const [before, own] = above.slice(-2);
  if (before === undefined || own === undefined || keyAndValue(own.row) === null) return null;
  const wanted = indent(at.row);
  if (indent(own.row) >= wanted || indent(before.row) !== wanted) return null;
  const missing = wanted - indent(own.row);
  return trouble(
    own,
    'a line indented like those before and after it',
    own.row,
    `Put ${missing === 1 ? 'one blank' : `${missing} blanks`} before this line.`,
  );
}

function wrongIndent(at: Where, { rows }: Pick<Surroundings, 'rows'>): YamlTrouble {
  const culprit = tooFarLeft(at, rows);
  if (culprit !== null) return culprit;
  return trouble(
    at,
    'answers of one block all indented by the same number of blanks',
    at.row,
    'Indent this line exactly like the other answers of its block; only what stands under a key without a value is indented further.',
  );
}

function nestedOnOneLine(at: Where, { rows }: Surroundings): YamlTrouble {
  const parts = keyAndValue(at.row);
  if (parts !== null && /:(\s|$)/.test(parts.value)) return colonInValue(at, parts.value);
  return wrongIndent({ line: at.line + 1, column: 1, row: rows[at.line] ?? '' }, { rows });
}

function colonInBrackets(at: Where): YamlTrouble {
  const before = at.row.slice(0, at.column - 1);
  const start = Math.max(before.lastIndexOf(','), before.lastIndexOf('{')) + 1;
  const value = keyAndValue(at.row.slice(start))?.value ?? at.row.slice(start);
  const column = at.row.indexOf(value, start) + 1;
  return colonInValue({ ...at, column }, valueFrom({ ...at, column }));
}

function unclosedQuote(at: Where, { document, whereIs, offset }: Surroundings): YamlTrouble {
  let opened: Where | null = null;
  visit(document, {
    Scalar(_, node) {
      const quoted = node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE';
      if (quoted && node.range != null && node.range[0] <= offset && node.range[1] >= offset) {
        opened = whereIs(node.range[0]);
      }
    },
  });
  const place: Where = opened ?? at;
  const mark = place.row[place.column - 1] ?? '"';
  return trouble(
    place,
    `a closing ${mark} for the one that opens here`,
    place.row.slice(place.column - 1),
    `Write ${mark} at the end of the value.`,
  );
}

function afterQuote(at: Where): YamlTrouble {
  const value = keyAndValue(at.row)?.value ?? at.row;
  const mark = value.slice(0, 1);
  if (mark === "'" || mark === '"') {
    const inner = value.slice(1, value.endsWith(mark) && value.length > 1 ? -1 : undefined);
    return trouble(
      at,
      `nothing after the quote that closes the value`,
      value,
      `Put all of it in quotes: ${inQuotes(inner.replace(/^(.*)"(.*)$/, '$1$2'))}.`,
    );
  }
  return general(at);
}

function unexpectedToken(at: Where): YamlTrouble {
  const sign = at.row.slice(at.column - 1, at.column);
  if (sign === ',') {
    return trouble(
      at,
      'an answer between two commas',
      at.row,
      'Remove the surplus comma, or put a value that holds a comma in quotes.',
    );
  }
  if (sign === '-') {
    return trouble(
      at,
      'a list with each of its entries on a line of its own',
      at.row,
      'Start the list on the next line, or write it in square brackets: [one, two].',
    );
  }
  return afterQuote(at);
}

function noColon(at: Where, { rows }: Surroundings): YamlTrouble {
  const row = at.row.trim();
  const tight = /^([\w-]+):(\S.*)$/.exec(row);
  if (tight !== null) {
    return trouble(at, 'a blank after the colon', row, `Write "${tight[1]}: ${tight[2]}".`);
  }
  const previous = keyAndValue(rows[at.line - 2] ?? '');
  if (previous !== null && /^\s/.test(at.row) && row.includes(':')) return wrongIndent(at, { rows });
  return trouble(
    at,
    'a key, a colon, a blank and a value',
    row,
    'Write a colon and a blank between key and value; a value that runs over two lines is put in quotes or indented under its key.',
  );
}

function flowNotClosed(at: Where, { rows }: Surroundings): YamlTrouble | null {
  for (let index = Math.min(at.line, rows.length) - 1; index >= 0; index -= 1) {
    const row = rows[index] ?? '';
    const open = Math.max(row.lastIndexOf('{'), row.lastIndexOf('['));
    if (open === -1) continue;
    const sign = row.charAt(open);
    const closing = sign === '{' ? '}' : ']';
    return trouble(
      { line: index + 1, column: open + 1, row },
      `a closing ${closing} for the ${sign} that opens here`,
      row.slice(open),
      `Write ${closing} after the last answer inside, on the same line or on an indented one.`,
    );
  }
  return null;
}

function general(at: Where): YamlTrouble {
  return trouble(
    at,
    'a key, a colon, a blank and a value',
    at.row,
    'Compare the line with those above it; a value with unusual signs is put in quotes.',
  );
}

const byCode: Partial<Record<ErrorCode, (at: Where, around: Surroundings) => YamlTrouble>> = {
  TAB_AS_INDENT: (at) =>
    trouble(
      at,
      'blanks at the start of the line',
      at.row.replaceAll('\t', '(tab)'),
      'Replace the tab by two blanks; YAML does not allow tabs there.',
    ),
  DUPLICATE_KEY: (at) => {
    const key = /^[^:\s]+/.exec(at.row.slice(at.column - 1))?.[0] ?? '';
    return {
      ...trouble(
        at,
        'each key once in its block',
        key,
        `Keep one line with "${key}:" and remove the other, or give it a key of its own.`,
      ),
      fatal: false,
    };
  },
  BAD_SCALAR_START: specialStart,
  TAG_RESOLVE_FAILED: specialStart,
  BAD_DQ_ESCAPE: (at) =>
    trouble(
      at,
      'no backslash inside double quotes',
      at.row,
      "Use single quotes ('...'), in which a backslash is a backslash.",
    ),
  MULTIPLE_DOCS: (at) =>
    trouble(at, 'one set of answers', at.row, 'Remove this line of dashes; answers stand in one block.'),
  BLOCK_AS_IMPLICIT_KEY: nestedOnOneLine,
  BLOCK_IN_FLOW: colonInBrackets,
  MULTILINE_IMPLICIT_KEY: noColon,
  UNEXPECTED_TOKEN: unexpectedToken,
  MISSING_CHAR: (at, around) => {
    const atEnd = around.document.errors.find(({ pos }) => pos[0] === around.offset)?.message ?? '';
    return atEnd.includes('quote') ? unclosedQuote(at, around) : noColon(at, around);
  },
  BAD_INDENT: (at, around) => {
    const message = around.document.errors.find(({ pos }) => pos[0] === around.offset)?.message ?? '';
    return message.startsWith('Flow')
      ? (flowNotClosed(at, around) ?? wrongIndent(at, around))
      : wrongIndent(at, around);
  },
};

/** What an error code of the `yaml` library means to somebody who has never heard of YAML. */
export function yamlErrorWords(code: ErrorCode, at: Where, around: Surroundings): YamlTrouble {
  return (byCode[code] ?? general)(at, around);
}
