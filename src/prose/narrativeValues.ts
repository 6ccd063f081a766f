import type MarkdownIt from 'markdown-it';
import type { StateInline, Token } from 'markdown-it';
import { units } from '../trade/units.ts';
import { escapeXml } from './escapeXml.ts';
import { chartMark } from './narrativeParts.ts';
import { unitAdjective } from './readerUnits.ts';
import { valueText, resolveReference, type Resolved } from './references.ts';
import type { Telling } from './telling.ts';
import { typedUnit } from './typedUnit.ts';
import { capitalised } from './words.ts';

/** Where a sentence about a chart sends its reader. */
interface ChartLink {
  readonly title: string;
  /** From the report's own page. */
  readonly address: string;
  /** Whether a narrative may have it; the lead chart stands under the answer on every page. */
  readonly mayMove: boolean;
}

/** Charts of a report by the name by which a narrative refers to them, which is the id of the figure. */
export type NarrativeCharts = Readonly<Record<string, ChartLink>>;

/** A reference as it is printed, and what is wrong with what stands around it. */
interface Printed {
  readonly resolved: Resolved;
  readonly html: string;
  /** What was typed behind it and is not printed, since the value says it. */
  readonly repeated: string | null;
}

const printed = new WeakMap<Token, Printed>();

/** Teaches a parser `{{ ... }}`; `printValues` then says what each of them prints. */
export function addValues(markdown: InstanceType<typeof MarkdownIt>): void {
  markdown.inline.ruler.before('escape', 'value', valueRule);
  markdown.renderer.rules['value'] = (tokens, index) => {
    const token = tokens[index];
    return token === undefined ? '' : (printed.get(token)?.html ?? escapeXml(token.content));
  };
  markdown.renderer.rules['unclosed'] = () => '{{';
  markdown.renderer.rules['chart_place'] = (tokens, index) => `${chartMark(tokens[index]?.content ?? '')}\n`;
}

/** `{{ words }}` becomes a token of its own; code spans are read before it and stay as they are. */
function valueRule(state: StateInline, silent: boolean): boolean {
  if (!state.src.startsWith('{{', state.pos)) return false;
  const end = state.src.indexOf('}}', state.pos + 2);
  if (end < 0) return unclosed(state, silent);
  if (!silent) {
    const token = state.push('value', '', 0);
    token.content = state.src.slice(state.pos, end + 2);
    token.meta = { startsSentence: /(^|[.!?])\s*$/.test(state.src.slice(0, state.pos)) };
  }
  state.pos = end + 2;
  return true;
}

/** Where no braces close a reference, a token of its own tells of it as a problem: the first of a paragraph for all. */
function unclosed(state: StateInline, silent: boolean): boolean {
  if (isUnclosed(state)) return false;
  if (!silent) {
    state.push('unclosed', '', 0).content = /^[^\n]{0,60}/.exec(state.src.slice(state.pos))?.[0] ?? '{{';
  }
  state.pos += 2;
  return true;
}

const isUnclosed = ({ tokens }: StateInline): boolean => tokens.some(({ type }) => type === 'unclosed');

function wordsOf(token: Token): string[] {
  return token.content.slice(2, -2).trim().split(/\s+/);
}

function startsSentence({ meta }: Token): boolean {
  return (
    typeof meta === 'object' && meta !== null && 'startsSentence' in meta && meta.startsSentence === true
  );
}

/** What a reference stands for; of a token that `printValues` has seen. */
export const resolvedOf = (token: Token): Resolved | null => printed.get(token)?.resolved ?? null;

/** A unit that was typed behind a value that brings its own; null where none was. */
export const repeatedUnit = (token: Token): string | null => printed.get(token)?.repeated ?? null;

/**
 * Resolves every reference, with what stands around it: a unit that is typed behind a value is the value's own and goes;
 * a clause that ends a paragraph, or before a new sentence, gets its full stop. A chart alone in a paragraph of its own
 * becomes a place for that chart, the first time.
 */
export function printValues(tokens: Token[], telling: Telling, charts: NarrativeCharts): Token[] {
  const names = Object.keys(charts);
  const placed = new Set<string>();
  const placesAt = new Map<number, string>();
  tokens.forEach((_, index) => {
    const chart = chartAlone(tokens, index, telling, charts);
    if (chart === null || placed.has(chart)) return;
    placed.add(chart);
    placesAt.set(index, chart);
  });
  const linkTo = (chart: string): string => {
    const { title = chart, address = `#${chart}` } = charts[chart] ?? {};
    const here = placed.has(chart) ? `#${chart}` : address;
    return `<a href="${escapeXml(here)}">${escapeXml(title)}</a>`;
  };
  tokens.forEach((token, index) => {
    const inParagraph = tokens[index - 1]?.type === 'paragraph_open' && tokens[index - 1]?.hidden !== true;
    const children = token.children ?? [];
    children.forEach((child, at) => {
      if (child.type !== 'value') return;
      const resolved = resolveReference(wordsOf(child), telling, names);
      printed.set(child, {
        resolved,
        ...print(resolved, child, { after: children.slice(at + 1), inParagraph }, linkTo),
      });
    });
  });
  return tokens.flatMap((token, index) => {
    const chart = placesAt.get(index);
    if (chart !== undefined)
      return [Object.assign(token, { type: 'chart_place', content: chart, children: null })];
    return placesAt.has(index + 1) || placesAt.has(index - 1) ? [] : [token];
  });
}

/** The chart whose reference is all that a paragraph of the narrative itself holds; null of any other token. */
function chartAlone(
  tokens: readonly Token[],
  index: number,
  telling: Telling,
  charts: NarrativeCharts,
): string | null {
  const [only, ...more] = tokens[index]?.children ?? [];
  const paragraph = tokens[index - 1];
  if (only?.type !== 'value' || more.length > 0) return null;
  if (paragraph?.type !== 'paragraph_open' || paragraph.level !== 0) return null;
  const resolved = resolveReference(wordsOf(only), telling, Object.keys(charts));
  return resolved.kind === 'chart' && charts[resolved.chart]?.mayMove === true ? resolved.chart : null;
}

function print(
  resolved: Resolved,
  token: Token,
  { after, inParagraph }: { readonly after: readonly Token[]; readonly inParagraph: boolean },
  linkTo: (chart: string) => string,
): Pick<Printed, 'html' | 'repeated'> {
  const opened = (text: string): string => escapeXml(startsSentence(token) ? capitalised(text) : text);
  switch (resolved.kind) {
    case 'unknown':
      return { html: escapeXml(token.content), repeated: null };
    case 'chart':
      return { html: linkTo(resolved.chart), repeated: null };
    case 'count':
      return { html: opened(resolved.text), repeated: null };
    case 'number': {
      const typed = takeUnit(after, resolved.unit);
      const { printed: number, unit } = resolved;
      // Before a noun there is no other way to write it, so that nothing is said twice.
      const text = typed?.joined === true ? `${number}-${unitAdjective(unit)}` : valueText(resolved);
      return { html: opened(text), repeated: typed === null || typed.joined ? null : typed.text.trim() };
    }
    case 'words': {
      const typed = takeUnit(after, resolved.unit);
      const stop = resolved.isClause && inParagraph && endsSentence(after) ? '.' : '';
      return { html: opened(resolved.text) + stop, repeated: typed?.text.trim() ?? null };
    }
  }
}

/** The first text behind a token on its way through marks of emphasis and ends of lines. */
function textAfter(after: readonly Token[]): Token | null {
  for (const token of after) {
    if (token.type === 'text' && token.content !== '') return token;
    if (token.type !== 'text' && token.type !== 'softbreak' && !/_(?:open|close)$/.test(token.type))
      return null;
  }
  return null;
}

/** Takes a unit away that is typed there, and gives it. */
function takeUnit(after: readonly Token[], unit: keyof typeof units): ReturnType<typeof typedUnit> {
  const text = textAfter(after);
  const typed = text === null ? null : typedUnit(text.content, unit);
  if (text === null || typed === null) return null;
  text.content = text.content.slice(typed.text.length);
  // The end of a line before it was its blank.
  for (const token of after.slice(0, after.indexOf(text)))
    if (token.type === 'softbreak') Object.assign(token, { type: 'text', content: '' });
  return typed;
}

/** Whether nothing goes on behind a clause: its paragraph ends, or a new sentence begins. */
function endsSentence(after: readonly Token[]): boolean {
  const rest = after
    .map(({ type, content }) => (type === 'softbreak' || type === 'hardbreak' ? ' ' : content))
    .join('');
  return rest.trim() === '' || /^\s+\p{Lu}/u.test(rest);
}
