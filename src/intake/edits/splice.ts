import { isAlias, isMap, isScalar, isSeq, type Node, type Pair, type YAMLMap, type YAMLSeq } from 'yaml';
import type { Answer, AnswerEdit } from './answerEdit.ts';
import { behindColon, onOneLine } from './writtenAnswer.ts';

/** A stretch of a text that becomes another one. */
export interface Splice {
  readonly start: number;
  readonly end: number;
  readonly words: string;
}

/** What of a document is edited, with the text that it was read from. */
export interface Place {
  readonly text: string;
  readonly newline: string;
}

type Written = YAMLMap | YAMLSeq;

/** Where an edit takes place: the block that holds it, and what of its path lies below that block. */
interface Edited {
  readonly block: Written;
  readonly step: string | number;
  /** What the step holds in the end; null takes it out. */
  readonly to: Answer | null;
}

/**
 * The block that holds what is edited, as deep as there are blocks; keys that are not there yet become answers under
 * keys. Null where a step leads through an answer in words, or nowhere.
 */
export function editedIn(top: Written, { path, to }: AnswerEdit): Edited | null {
  let block = top;
  for (const [depth, step] of path.entries()) {
    const inner = depth === path.length - 1 ? undefined : childOf(block, step);
    if (isMap(inner) || isSeq(inner)) {
      block = inner;
      continue;
    }
    const blank = inner === undefined || inner === null || (isScalar(inner) && inner.value === '');
    return blank ? { block, step, to: nested(path.slice(depth + 1), to) } : null;
  }
  return null;
}

function nested(path: AnswerEdit['path'], to: Answer | null): Answer | null {
  const [step, ...further] = path;
  if (step === undefined || to === null) return to;
  const inner = nested(further, to);
  if (inner === null) return null;
  return typeof step === 'number' ? [inner] : { [step]: inner };
}

function childOf(block: Written, step: string | number): unknown {
  return isMap(block) ? pairOf(block, step)?.value : typeof step === 'number' ? block.items[step] : undefined;
}

const pairOf = (map: YAMLMap, step: string | number): Pair | undefined =>
  map.items.find(({ key }) => isScalar(key) && String(key.value) === String(step));

/** A key that is not there yet, and behind which other one it goes where it has a place. */
interface NewPair {
  readonly key: string;
  readonly to: Answer;
  readonly after: string | undefined;
}

/** The stretch of the text that the edit changes; null where that cannot be told from the text alone. */
export function spliceFor(
  { block, step, to }: Edited,
  after: string | undefined,
  place: Place,
): Splice | null {
  if (isMap(block)) {
    const pair = pairOf(block, step);
    if (pair !== undefined)
      return to === null ? withoutPair(block, pair, place) : withValue(pair, to, block, place);
    return to === null ? null : withPair(block, { key: String(step), to, after }, place);
  }
  if (typeof step !== 'number') return null;
  const item = block.items[step];
  if (item !== undefined) return to === null ? withoutItem(block, step, place) : withItem(item, to, place);
  return to === null || step !== block.items.length ? null : withFurtherItem(block, to, place);
}

function withValue(pair: Pair, to: Answer, map: YAMLMap, { text, newline }: Place): Splice | null {
  const start = behindKey(pair, text);
  const end = endOfPair(pair, text);
  if (start === null || end === null) return null;
  const blanks = ' '.repeat(columnOf(start.key, text));
  const inline = map.flow === true;
  if (isScalar(pair.value) && !isBlankScalar(pair.value) && typeof to === 'string' && to !== '') {
    const from = pair.value.range?.[0];
    // A value in many lines begins with a sign of its own.
    if (from !== undefined) return { start: from, end, words: onOneLine(to) };
  }
  const words = inline ? ` ${onOneLine(to)}` : behindColon(to, blanks, newline);
  // A comment behind an empty key, or behind one word, stays with the key.
  const isLines = words.startsWith(newline) && (pair.value === null || isScalar(pair.value));
  const lineEnd = isLines ? endOfLine(end, text) : end;
  return { start: start.colon, end: lineEnd, words: text.slice(end, lineEnd) + words };
}

function withPair(map: YAMLMap, { key, to, after }: NewPair, { text, newline }: Place): Splice | null {
  const last = (after === undefined ? undefined : pairOf(map, after)) ?? map.items.at(-1);
  if (map.flow === true) {
    const words = onOneLine({ [key]: to }).slice(1, -1);
    if (last === undefined) {
      const open = map.range?.[0];
      return open === undefined ? null : { start: open + 1, end: open + 1, words };
    }
    const end = endOfPair(last, text);
    return end === null ? null : { start: end, end, words: `, ${words}` };
  }
  const first = map.items[0];
  const key0 = first === undefined ? undefined : rangeOf(first.key);
  const end = last === undefined ? null : endOfPair(last, text);
  if (key0 === undefined || end === null) return null;
  const blanks = ' '.repeat(columnOf(key0[0], text));
  const at = endOfLine(end, text);
  return {
    start: at,
    end: at,
    words: `${newline}${blanks}${onOneLine(key)}:${behindColon(to, blanks, newline)}`,
  };
}

function withoutPair(map: YAMLMap, pair: Pair, place: Place): Splice | null {
  const { text } = place;
  const range = rangeOf(pair.key);
  const end = endOfPair(pair, text);
  if (range === undefined || end === null) return null;
  if (map.flow === true)
    return withoutEntry(
      map.items.map((item) => rangeOf(item.key)?.[0]),
      map.items.indexOf(pair),
      end,
      text,
    );
  // The first key of an entry shares its line with the dash.
  if (text.slice(startOfLine(range[0], text), range[0]).trim() !== '') return null;
  return { start: startOfLine(range[0], text), end: startOfNextLine(end, text), words: '' };
}

function withItem(item: unknown, to: Answer, place: Place): Splice | null {
  const range = rangeOf(item);
  const end = endOf(item, place.text);
  if (range === undefined || end === null) return null;
  return { start: range[0], end, words: onOneLine(to) };
}

function withoutItem(list: YAMLSeq, at: number, { text }: Place): Splice | null {
  const starts = list.items.map((item) => rangeOf(item)?.[0]);
  const start = starts[at];
  const end = endOf(list.items[at], text);
  if (start === undefined || end === null) return null;
  if (list.flow === true) return withoutEntry(starts, at, end, text);
  const line = startOfLine(start, text);
  if (!/^\s*-\s+$/.test(text.slice(line, start))) return null;
  return { start: line, end: startOfNextLine(end, text), words: '' };
}

/** In brackets: with the comma behind it, or before it where it is the last. */
function withoutEntry(
  starts: readonly (number | undefined)[],
  at: number,
  end: number,
  text: string,
): Splice | null {
  const [before, start, next] = [starts[at - 1], starts[at], starts[at + 1]];
  if (start === undefined) return null;
  if (next !== undefined) return { start, end: next, words: '' };
  if (before === undefined) return { start, end, words: '' };
  const comma = text.lastIndexOf(',', start);
  return comma < before ? null : { start: comma, end, words: '' };
}

function withFurtherItem(list: YAMLSeq, to: Answer, { text, newline }: Place): Splice | null {
  const last = list.items.at(-1);
  if (list.flow === true) {
    const open = list.range?.[0];
    const end = last === undefined ? (open === undefined ? null : open + 1) : endOf(last, text);
    return end === null
      ? null
      : { start: end, end, words: `${last === undefined ? '' : ', '}${onOneLine(to)}` };
  }
  const start = rangeOf(last)?.[0];
  const end = endOf(last, text);
  if (start === undefined || end === null) return null;
  const dash = text.lastIndexOf('-', start);
  const line = startOfLine(start, text);
  if (dash < line || text.slice(line, dash).trim() !== '') return null;
  const at = endOfLine(end, text);
  return { start: at, end: at, words: `${newline}${text.slice(line, dash)}- ${onOneLine(to)}` };
}

/** Where a key begins, and where the text behind its colon does. */
function behindKey(pair: Pair, text: string): { readonly key: number; readonly colon: number } | null {
  const range = rangeOf(pair.key);
  if (range === undefined) return null;
  const colon = text.indexOf(':', range[1]);
  return colon < 0 ? null : { key: range[0], colon: colon + 1 };
}

function endOfPair(pair: Pair, text: string): number | null {
  const blank = pair.value === null || (isScalar(pair.value) && isBlankScalar(pair.value));
  return blank ? (behindKey(pair, text)?.colon ?? null) : endOf(pair.value, text);
}

/** Where what is written of a node ends, without comments and line breaks behind it. */
function endOf(node: unknown, text: string): number | null {
  if ((isMap(node) || isSeq(node)) && node.flow !== true) {
    if (isSeq(node)) return endOf(node.items.at(-1), text);
    const last = node.items.at(-1);
    return last === undefined ? null : endOfPair(last, text);
  }
  const range = rangeOf(node);
  if (range === undefined) return null;
  let [start, end] = range;
  if (isScalar(node) && (node.type === 'BLOCK_LITERAL' || node.type === 'BLOCK_FOLDED'))
    while (end > start && /[\r\n \t]/.test(text[end - 1] ?? '')) end -= 1;
  return end;
}

const isBlankScalar = (node: { readonly value: unknown; readonly range?: Node['range'] }): boolean =>
  node.value === '' && node.range?.[0] === node.range?.[1];

function rangeOf(node: unknown): readonly [start: number, end: number] | undefined {
  if (!isScalar(node) && !isMap(node) && !isSeq(node) && !isAlias(node)) return undefined;
  return node.range === undefined || node.range === null ? undefined : [node.range[0], node.range[1]];
}

const startOfLine = (at: number, text: string): number =>
  Math.max(text.lastIndexOf('\n', at - 1), text.lastIndexOf('\r', at - 1)) + 1;

function endOfLine(at: number, text: string): number {
  const found = /[\r\n]/.exec(text.slice(at));
  return found === null ? text.length : at + found.index;
}

function startOfNextLine(at: number, text: string): number {
  const end = endOfLine(at, text);
  return end + (/^\r\n|^\n|^\r/.exec(text.slice(end))?.[0].length ?? 0);
}

const columnOf = (at: number, text: string): number => at - startOfLine(at, text);
