import { mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { HtmlValidate } from 'html-validate';
import { describe, expect, test } from 'vitest';
import { cautionsInPicture } from '../../src/kit/emailCautions.ts';
import { emailBlock, emailHtml } from '../../src/kit/emailHtml.ts';
import { emailParts, type EmailParts } from '../../src/kit/emailParts.ts';
import { emailText } from '../../src/kit/emailText.ts';
import { exportedPictures } from '../../src/kit/exportForms.ts';
import { caveats } from '../../src/kit/caveatStrip.ts';
import { wholeHeadline } from '../../src/kit/headline.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import type { Report } from '../../src/kit/report.ts';
import { answerOf, primaryMetrics } from '../../src/prose/answers.ts';
import { gravestBeside } from '../../src/prose/cautions.ts';
import { sayCaution } from '../../src/prose/english/cautions.ts';
import { sayCautionInBrief, sayWhatDecides } from '../../src/prose/english/kit/cautionsInBrief.ts';
import { standingInBrief } from '../../src/prose/english/kit/standing.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { metrics } from '../../src/trade/metrics.ts';
import { around, reportOf } from '../findings/reportOf.ts';
import { writeTriedContent } from '../specimen-pages/triedContent.ts';
import { oddOnes, reports } from './content.ts';
import { asWordProcessor, wordsOf } from './mailEngines.ts';

const caseReports = readdirSync(resolve('tests/cases'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap(({ name }) => loadSite(resolve('tests/cases', name, 'content')).reports);
const triedFolder = mkdtempSync(join(tmpdir(), 'straightface-mailed-'));
writeTriedContent(triedFolder);
const all: readonly Report[] = [
  ...reports,
  ...oddOnes,
  ...loadSite(triedFolder).reports,
  ...caseReports,
].filter(({ source }) => source.front.status !== 'withdrawn');

const absolute = (path: string): string => `https://golf.example${path}`;
const partsOf = (report: Report): EmailParts => emailParts(report, absolute);
const counted = (text: string): number => text.split(/\s+/).length;

/** Sentences of four words or more, paragraph by paragraph: a heading has no full stop. */
const sentencesOf = (text: string): readonly string[] =>
  text
    .split('\n\n')
    .flatMap(
      (paragraph) => paragraph.replaceAll(/\s+/g, ' ').match(/[^.!?]+(?:[.!?](?!\s)[^.!?]*)*[.!?]?/g) ?? [],
    )
    .map((one) => one.trim().toLowerCase())
    .filter((one) => counted(one) >= 4);

describe.each(all.map((report) => [report.source.slug, report] as const))('%s', (_slug, report) => {
  const parts = partsOf(report);
  const { telling, findings, source } = report;
  const mail = emailHtml(parts);
  const block = emailBlock(parts);
  const text = emailText(parts);
  const figure = kitOf(report).offered[0]?.figure ?? null;

  test('every answer has at most 40 words, under a heading with measure, what was varied and who hit', () => {
    const measures = primaryMetrics(findings);
    expect(parts.answers).toHaveLength(measures.length);
    parts.answers.forEach(({ heading, words }, at) => {
      expect(counted(words), words).toBeLessThanOrEqual(40);
      const { name } = metrics[measures[at]?.id ?? 'carry'];
      expect(heading.toLowerCase()).toContain(name);
      expect(heading).toContain(telling.nouns);
      expect(heading).toMatch(/\b(?:one golfer|(?:two|three|eight|\d+) golfers)\b/);
    });
  });

  test('words and picture carry the same cautions', () => {
    const shown = figure === null ? [] : cautionsInPicture(report, figure);
    const forms = shown.flatMap((caution) => [
      sayCaution(caution, telling),
      sayCautionInBrief(caution, telling),
      sayWhatDecides(caution),
    ]);
    const drawn = figure === null ? [] : [...caveats(report, figure), ...wholeHeadline(report, figure)];
    for (const { kind, text: said } of drawn) if (kind === 'caution') expect(forms).toContain(said);
    for (const caution of shown) {
      // The answer says it, by whom it was calculated or that the order leaves the cause open.
      const metric = findings.metrics.find(({ id }) => id === caution.about.metric);
      const answered =
        gravestBeside([caution]) === null ||
        (metric !== undefined &&
          caution.facts.overlay === 'modelled-reading' &&
          answerOf(metric, findings).calculatedBy !== null);
      if (answered) continue;
      for (const edition of [wordsOf(mail), wordsOf(block), text.replaceAll(/\s+/g, ' ')])
        expect(edition).toContain(sayCaution(caution, telling));
    }
  });

  test('nothing is said twice by the words, nor three times with the picture', () => {
    const said = sentencesOf(text);
    expect(said.filter((one, at) => said.indexOf(one) !== at)).toEqual([]);
    const drawn = figure === null ? [] : [...wholeHeadline(report, figure), ...caveats(report, figure)];
    const shown = [...said, ...drawn.flatMap((one) => sentencesOf(one.text))];
    expect(shown.filter((one) => shown.filter((other) => other === one).length > 2)).toEqual([]);
  });

  test('shows three figures, each with what it is of', () => {
    expect(parts.figures).toHaveLength(3);
    for (const { value, label } of parts.figures) {
      expect(value).toMatch(/\d/);
      expect(label).not.toBe('');
      expect(wordsOf(mail)).toContain(`${value} ${label}`);
      expect(text.replaceAll(/\s+/g, ' ')).toContain(`${value}: ${label}`);
    }
  });

  test('a list of mails shows how the report stands before what was found', () => {
    const standing = standingInBrief(source.front);
    expect(parts.preheader.startsWith(standing)).toBe(true);
    expect(parts.preheader.length).toBeGreaterThan(standing.length + 20);
    expect(parts.preheader.length).toBeLessThanOrEqual(160);
    // Hidden, and before all else in the body.
    const body = mail.slice(mail.indexOf('<body'));
    expect(body.indexOf('mso-hide:all')).toBeLessThan(body.indexOf('<table'));
    expect(wordsOf(body).trim().startsWith(parts.preheader)).toBe(true);
  });

  test('has title, answers, interest, picture, figures and the way to the report, in this order', () => {
    const words = wordsOf(mail.slice(mail.indexOf('<table')));
    const places = [
      source.front.title,
      parts.answers[0]?.words ?? '',
      'Our interest.',
      parts.figures[2]?.label ?? '',
      'Read the whole report',
      '[Postal address of the sender]',
    ].map((part) => words.indexOf(part));
    expect(places).toEqual(places.toSorted((x, y) => x - y));
    expect(Math.min(...places)).toBeGreaterThan(-1);
    const picture = mail.indexOf('<img');
    expect(picture).toBeGreaterThan(mail.indexOf('Our interest'));
    expect(picture).toBeLessThan(mail.indexOf('the smallest difference'));
  });

  test('the block has title, answers, interest, picture and link, and nothing for a sender to fill in', () => {
    const words = wordsOf(block);
    for (const part of [source.front.title, parts.interest.words, 'Read the whole report'])
      expect(words).toContain(part);
    for (const { words: answer } of parts.answers) expect(words).toContain(answer);
    expect(block.match(/<img/g)).toHaveLength(1);
    expect(words).not.toContain('[');
    expect(words.includes(parts.standing)).toBe(true);
  });

  test('both forms of the picture are made by every build', () => {
    if (figure === null || parts.picture === null) throw new Error('no picture');
    const own = source.shop?.defaults.units ?? 'yards';
    const made = exportedPictures(figure.id, { own, choices: [], leads: true }).map(({ name }) =>
      absolute(`/reports/${source.slug}/charts/${name}.png`),
    );
    expect(made).toContain(parts.picture.wide);
    expect(made).toContain(parts.picture.phone);
  });

  test('a word-processor engine gets one picture with its size, in a table of 600 px', () => {
    for (const html of [mail, block]) {
      const seen = asWordProcessor(html);
      const images = seen.match(/<img[^>]*>/g) ?? [];
      expect(images).toHaveLength(1);
      expect(seen).toMatch(/<table[^>]* width="600"[^>]*><tr><td width="600">/);
      expect(seen.match(/<table/g)?.length).toBe(seen.match(/<\/table>/g)?.length);
      expect(seen.match(/<td/g)?.length).toBe(seen.match(/<\/td>/g)?.length);
    }
    expect(asWordProcessor(mail)).toMatch(/<img[^>]* width="598" height="\d{3,}"/);
  });

  test('text is set in families that such engines have, with line heights that they keep', () => {
    for (const html of [mail, block]) {
      for (const [, family = ''] of html.matchAll(/font-family:([^,;]*)/g))
        expect(['Arial', 'Georgia']).toContain(family);
      for (const [style = ''] of html.matchAll(/style="[^"]*line-height[^"]*"/g))
        expect(style).toContain('mso-line-height-rule:exactly');
      // Room is made by cells: such engines drop the padding of all else and add margins of their own.
      for (const [tag = ''] of html.matchAll(/<(?:p|h1|h2|table|div)\b[^>]*>/g))
        expect(tag).not.toMatch(/padding:|margin(?:-\w+)?:(?!0;)/);
      for (const [tag = ''] of html.matchAll(/<(?:p|h1|h2)\b[^>]*>/g)) expect(tag).toContain('margin:0;');
    }
  });

  test('is valid HTML, and so is what such engines take it for', async () => {
    const validator = new HtmlValidate({
      extends: ['html-validate:recommended'],
      rules: {
        // What old mail programs need is what newer HTML has given up: attributes of tables, styles on elements.
        'no-deprecated-attr': 'off',
        'no-inline-style': 'off',
        'presentation-role-style': 'off',
        'prefer-tbody': 'off',
        'attribute-allowed-values': ['error', { ignore: ['align', 'valign'] }],
        'no-conditional-comment': 'off',
        'long-title': 'off',
        'doctype-style': 'off',
        // Names of contenders may hold what looks like it.
        'tel-non-breaking': 'off',
      },
    });
    const page = (inside: string): string =>
      `<!doctype html><html lang="en"><head><title>Newsletter</title></head><body>${inside}</body></html>`;
    for (const html of [mail, page(block), page(asWordProcessor(block))]) {
      const { results } = await validator.validateString(html);
      expect(
        results.flatMap(({ messages }) => messages.map(({ ruleId, message }) => `${ruleId}: ${message}`)),
      ).toEqual([]);
    }
  });

  test('stays under 90 kB', () => {
    for (const html of [mail, block]) expect(Buffer.byteLength(html)).toBeLessThan(90_000);
  });
});

test('the walk meets answers too long for a mail, cautions that decide, several measures and all kinds of figures', () => {
  const parts = all.map(partsOf);
  const cautioned = parts.flatMap(({ answers }) => answers.flatMap(({ cautions }) => cautions));
  expect(cautioned.some((words) => words.includes('left out'))).toBe(true);
  expect(cautioned.some((words) => words.includes('one shot far from the others'))).toBe(true);
  expect(parts.some(({ answers }) => answers.length === 2)).toBe(true);
  expect(parts.some(({ answers }) => answers.some(({ words }) => words.includes(' yd')))).toBe(true);
  const labels = parts.map(({ figures }) => figures[0]?.label ?? '');
  for (const kind of ['pairings', 'would be found', 'by chance alone', 'golfer'])
    expect(labels.some((label) => label.includes(kind))).toBe(true);
});

test('a mail says once that one was not judged, and gives it no figure', () => {
  const report = reportOf({
    shots: {
      'Carry (yd)': { alder: around(237), birch: around(231).toReversed(), cedar: around(225).slice(0, 4) },
    },
  });
  const [{ words } = { words: '' }, ...others] = partsOf(report).answers;
  expect(others).toEqual([]);
  expect(words.match(/did not judge/g)).toHaveLength(1);
  expect(words).toContain('We did not judge Cedar: four shots are too few.');
});

test('a mail and a block have each measure once, with its own heading and answer', () => {
  const report = reportOf({
    shots: {
      'Carry (yd)': { alder: around(237), birch: around(231).toReversed(), cedar: around(225) },
      'Ball Speed (mph)': { alder: around(150), birch: around(150), cedar: around(150) },
    },
    front: { primary: '[carry, ball_speed]' },
  });
  const parts = partsOf(report);
  expect(parts.answers.map(({ heading }) => heading)).toEqual([
    expect.stringMatching(/^Carry of .*one golfer: \p{Ll}/u),
    expect.stringMatching(/^Ball speed of .*one golfer: \p{Ll}/u),
  ]);
  for (const text of [
    emailText(parts).replaceAll(/\s+/g, ' '),
    wordsOf(emailHtml(parts)),
    wordsOf(emailBlock(parts)),
  ])
    for (const { heading, words } of parts.answers) {
      expect(text.split(words)).toHaveLength(2);
      expect(text).toContain(heading);
    }
});

test('how often single shots went one way is told of the pair that the answer begins with, or not at all', () => {
  for (const report of all) {
    const [label = ''] = partsOf(report).figures.map((figure) => figure.label);
    if (!label.startsWith('pairings')) continue;
    const [metric] = primaryMetrics(report.findings);
    const [first] = metric === undefined ? [] : answerOf(metric, report.findings).statements;
    expect(['one', 'ahead-of']).toContain(first?.kind);
    const pair =
      first?.kind === 'one' ? first.answer : first?.kind === 'ahead-of' ? first.answers[0] : undefined;
    if (pair === undefined) throw new Error(report.source.slug);
    expect(label).toContain(`${report.telling.the(pair.ahead)} `);
    expect(label.endsWith(report.telling.the(pair.behind))).toBe(true);
    expect(pair.status).not.toBe('not-confirmed');
  }
});
