import { escapeXml } from './escapeXml.ts';

/** What is left to read of a formula. */
interface Reader {
  readonly formula: string;
  at: number;
}

/**
 * A formula as a MathML element of its own line. The notation is a small part of TeX's: `x_a`, `x^2`, `x_{n − 1}`,
 * `\frac{a}{b}`, `\sqrt{a}`, `\abs{a}`, `\text{words}`, and `\name` for a function; letters are variables.
 *
 * @throws Error where a brace is not closed or something is missing: formulas are constants of ours
 */
export function mathMl(formula: string): string {
  const reader: Reader = { formula, at: 0 };
  const row = rowOf(reader);
  if (reader.at < formula.length) throw new Error(`A brace too many: ${formula}`);
  return `<math display="block"><mrow>${row}</mrow></math>`;
}

const peek = ({ formula, at }: Reader): string => formula.charAt(at);

/** Everything up to the end or a closing brace. */
function rowOf(reader: Reader): string {
  let row = '';
  for (skipBlanks(reader); peek(reader) !== '' && peek(reader) !== '}'; skipBlanks(reader))
    row += termOf(reader);
  return row;
}

function skipBlanks(reader: Reader): void {
  while (peek(reader) === ' ') reader.at += 1;
}

/** One thing with what is set below and above it. */
function termOf(reader: Reader): string {
  const base = atomOf(reader);
  const below = scriptOf(reader, '_');
  const above = scriptOf(reader, '^');
  if (below !== null && above !== null) return `<msubsup>${base}${below}${above}</msubsup>`;
  if (below !== null) return `<msub>${base}${below}</msub>`;
  return above === null ? base : `<msup>${base}${above}</msup>`;
}

function scriptOf(reader: Reader, mark: '_' | '^'): string | null {
  if (peek(reader) !== mark) return null;
  reader.at += 1;
  return atomOf(reader);
}

function atomOf(reader: Reader): string {
  const rest = reader.formula.slice(reader.at);
  if (rest.startsWith('{')) return groupOf(reader);
  const [found = ''] = /^(?:\\[a-z]+|\d+(?:\.\d+)?|.)/u.exec(rest) ?? [];
  if (found === '' || found === '}') throw new Error(`Something is missing: ${reader.formula}`);
  reader.at += found.length;
  if (found.startsWith('\\')) return commandOf(found.slice(1), reader);
  if (/\d/.test(found)) return `<mn>${found}</mn>`;
  // Upright in MathML's own sense: its slanted letters are characters of their own, which few fonts have.
  return /\p{L}/u.test(found) ? `<mi mathvariant="normal">${found}</mi>` : `<mo>${escapeXml(found)}</mo>`;
}

function commandOf(name: string, reader: Reader): string {
  switch (name) {
    case 'frac':
      return `<mfrac>${groupOf(reader)}${groupOf(reader)}</mfrac>`;
    case 'sqrt':
      return `<msqrt>${groupOf(reader)}</msqrt>`;
    case 'abs':
      return groupOf(reader, '<mo>|</mo>');
    case 'text':
      return `<mtext>${escapeXml(wordsOf(reader))}</mtext>`;
    default:
      return `<mi>${name}</mi>`;
  }
}

function groupOf(reader: Reader, fence = ''): string {
  if (peek(reader) !== '{') throw new Error(`A group is missing: ${reader.formula}`);
  reader.at += 1;
  const row = rowOf(reader);
  closeGroup(reader);
  return `<mrow>${fence}${row}${fence}</mrow>`;
}

/** Words as they are; blanks at their ends would be dropped. */
function wordsOf(reader: Reader): string {
  if (peek(reader) !== '{') throw new Error(`Words are missing: ${reader.formula}`);
  const end = reader.formula.indexOf('}', reader.at);
  const words = reader.formula.slice(reader.at + 1, end < 0 ? undefined : end);
  reader.at = end < 0 ? reader.formula.length : end;
  closeGroup(reader);
  return words.replace(/^ | $/g, '\u00a0');
}

function closeGroup(reader: Reader): void {
  if (peek(reader) !== '}') throw new Error(`A brace is not closed: ${reader.formula}`);
  reader.at += 1;
}
