import MarkdownIt, { type Token } from 'markdown-it';
import type { PictureFile } from '../intake/authored/picture.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import { once } from '../stats/onceEach.ts';
import { escapeXml } from './escapeXml.ts';
import { placesIn } from './linterText.ts';
import { pictureHtml, pictureProblems } from './narrativePictures.ts';
import { formatNumber } from './numbers.ts';
import { addValues, printValues, repeatedUnit, resolvedOf, type NarrativeCharts } from './narrativeValues.ts';
import type { Telling } from './telling.ts';

/** The fitter's own paragraphs as safe HTML, with everything that is wrong with them. */
interface Narrative {
  readonly html: string;
  readonly problems: readonly Problem[];
}

export interface NarrativeSource {
  readonly file: string;
  readonly text: string;
  /** Physical line of the file on which `text` begins. */
  readonly firstLine: number;
}

/** Levels that authored headings move down: they begin at h2 and stand under an h2 of the page. */
const headingShift = 1;

const addressAllowed = /^(https:|mailto:|#|\/(?!\/)|\.{0,2}\/(?!\/)|[\w-]+(\.[\w-]+)*(\/|$|#))/i;

/** Some 35,000 words; a page of them is no report any more. */
const longestNarrative = 200_000;

/** The problem of a narrative of over 200,000 characters, which is not read; null of any other. */
export function narrativeTooLong({ file, text, firstLine }: NarrativeSource): Problem | null {
  if (text.length <= longestNarrative) return null;
  return makeProblem(
    'narrative-too-long',
    { file, line: firstLine, column: 1 },
    {
      expected: `at most ${formatNumber(longestNarrative, 0)} characters below the front matter`,
      found: `${formatNumber(text.length, 0)} characters`,
      cure: 'Tell it in fewer words. Shots belong into the session file, and long notes into a page of their own that the report links to.',
    },
  );
}

/**
 * Markdown to HTML: no raw HTML, addresses limited to https, mailto and our own, pictures only those
 * that lie beside the report and with alternative text, `{{ ... }}` replaced by the value or chart it names.
 */
export function renderNarrative(
  source: NarrativeSource,
  telling: Telling,
  charts: NarrativeCharts,
  pictures: readonly PictureFile[],
): Narrative {
  const tooLong = narrativeTooLong(source);
  if (tooLong !== null) return { html: '', problems: [tooLong] };
  const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false });
  // Refused addresses must reach our own check instead of staying as plain text.
  markdown.validateLink = () => true;
  addValues(markdown);
  // A table may be wider than a phone and then scrolls by itself, by keyboard too.
  markdown.renderer.rules['table_open'] = (tokens, index) =>
    `<div class="scroll" role="group" aria-label="${escapeXml(tableName(tokens, index))}" tabindex="0">\n<table>\n`;
  markdown.renderer.rules['table_close'] = () => '</table>\n</div>\n';
  markdown.renderer.rules['image'] = (tokens, index, options, env, self) => {
    const image = tokens[index];
    if (image === undefined) return '';
    return pictureHtml(image, self.renderInlineAsText(image.children ?? [], options, env), pictures);
  };

  const tokens = markdown.parse(source.text, {});
  const shown = printValues(tokens, telling, charts);
  const problems = findProblems(tokens, source, pictures);
  return { html: markdown.renderer.render(shown.map(adjusted), markdown.options, {}), problems };
}

/** A table by the headings of its columns: "Table: Head, Feel". */
function tableName(tokens: readonly Token[], open: number): string {
  const headings: string[] = [];
  for (let at = open; at < tokens.length && tokens[at]?.type !== 'thead_close'; at += 1) {
    if (tokens[at]?.type === 'th_open') headings.push(tokens[at + 1]?.content ?? '');
  }
  return `Table: ${headings.filter((heading) => heading !== '').join(', ')}`;
}

/** Headings moved under the page's own, cell alignment as a class: the page's policy forbids style attributes. */
function adjusted(token: Token): Token {
  if (token.type === 'heading_open' || token.type === 'heading_close') {
    const level = Math.max(2, Number(token.tag.slice(1))) + headingShift;
    token.tag = `h${Math.min(6, level)}`;
  }
  if (token.type === 'th_open') token.attrSet('scope', 'col');
  const style = attribute(token, 'style');
  if (style !== null) {
    token.attrs = (token.attrs ?? []).filter(([name]) => name !== 'style');
    token.attrSet('class', `align-${style.replace(/^text-align:\s*/, '')}`);
  }
  return token;
}

function attribute(token: Token, name: string): string | null {
  const value = token.attrGet(name);
  return value === null ? null : String(value);
}

function findProblems(
  tokens: readonly Token[],
  source: NarrativeSource,
  pictures: readonly PictureFile[],
): Problem[] {
  const lines = source.text.split('\n');
  const problems: Problem[] = [];
  let map: readonly [number, number] = [0, lines.length];
  let locate = locatorIn(lines, map);
  const searchFrom = new Map<string, number>();
  for (const token of tokens) {
    // Inline tokens of table cells have no map and take their row's.
    if (token.map !== null && (token.map[0] !== map[0] || token.map[1] !== map[1])) {
      map = token.map;
      locate = locatorIn(lines, map);
    }
    for (const child of token.children ?? []) {
      const needle = needleOf(child);
      if (needle === null) continue;
      const key = `${map[0]} ${needle}`;
      const found = locate(needle, searchFrom.get(key) ?? 0);
      searchFrom.set(key, found.next);
      const place = { file: source.file, line: source.firstLine + found.line, column: found.column };
      problems.push(
        ...(child.type === 'image' ? pictureProblems(child, place, pictures) : problemsOf(child, place)),
      );
    }
  }
  return problems;
}

function needleOf(token: Token): string | null {
  if (token.type === 'value' || token.type === 'unclosed') return token.content;
  if (token.type === 'link_open') return attribute(token, 'href');
  if (token.type === 'image') return attribute(token, 'src');
  return null;
}

interface Located {
  readonly line: number;
  readonly column: number | null;
  /** Offset within the block after this occurrence. */
  readonly next: number;
}

/** Finds words in a block of lines; the block is joined once, when it is first asked. */
function locatorIn(
  lines: readonly string[],
  [first, end]: readonly [number, number],
): (needle: string, from: number) => Located {
  const block = once(() => {
    const text = lines.slice(first, end).join('\n');
    return { text, placeAt: placesIn(text, first) };
  });
  return (needle, from) => {
    const { text, placeAt } = block();
    const at = text.indexOf(needle, from);
    if (at < 0) return { line: first, column: null, next: from };
    return { ...placeAt(at), next: at + needle.length };
  };
}

function problemsOf(
  token: Token,
  place: { readonly file: string; readonly line: number; readonly column: number | null },
): Problem[] {
  if (token.type === 'value') return valueProblems(token, place);
  if (token.type === 'unclosed') {
    return [
      makeProblem('reference-unclosed', place, {
        expected: 'two closing braces in the same paragraph: {{ mean carry alder }}',
        found: token.content,
        cure: 'Close the reference with }}, or write the braces as code: `{{`.',
      }),
    ];
  }
  const address = attribute(token, 'href') ?? '';
  return addressAllowed.test(address)
    ? []
    : [
        makeProblem('link-refused', place, {
          expected: 'an address that begins with https:// or mailto:, or a path on this site',
          found: address,
          cure: 'Write the full https:// address, or take the link out.',
        }),
      ];
}

function valueProblems(
  token: Token,
  place: { readonly file: string; readonly line: number; readonly column: number | null },
): Problem[] {
  const resolved = resolvedOf(token);
  if (resolved?.kind === 'unknown') {
    const { expected, cure } = resolved;
    return [makeProblem('unknown-reference', place, { expected, found: token.content, cure })];
  }
  const repeated = repeatedUnit(token);
  if (repeated === null) return [];
  return [
    makeProblem('unit-repeated', place, {
      expected: 'a value alone: it prints its unit, yards or metres as the reader chooses',
      found: `${token.content} ${repeated}`,
      cure: `Take "${repeated}" out; the page leaves it out already.`,
    }),
  ];
}
