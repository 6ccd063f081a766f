import { describe, expect, test } from 'vitest';
import { kitOf } from '../../src/kit/kitOf.ts';
import { captionsText, termsText } from '../../src/kit/kitTexts.ts';
import { pictureFiles } from '../../src/kit/pictureFiles.ts';
import { spokenScripts } from '../../src/kit/spokenScript.ts';
import { interestSentences } from '../../src/prose/interest.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { oddOnes, reports } from './content.ts';
import { manyReports } from './manyReports.ts';

const all = [...reports, ...oddOnes].map((report) => [report.source.slug, report] as const);

describe.each(all)('%s', (_slug, report) => {
  test('captions.txt holds every caption, alternative text and name of a picture', () => {
    const text = captionsText(report);
    const { offered } = kitOf(report);
    for (const { title, captions, alt, figure } of offered) {
      for (const words of [title, ...Object.values(captions), alt]) expect(text).toContain(words);
      expect(text).toContain(`charts/${figure.id}.png, charts/${figure.id}.svg`);
    }
    for (const words of Object.values(spokenScripts(report))) expect(text).toContain(words);
    expect(text).toContain(report.source.front.inventedData ? 'Invented data.' : 'of the report.');
  });

  test('README.txt says whose it is, when it was hit, on what terms, and what the shop has to gain', () => {
    const text = termsText(report);
    expect(text).toContain(report.source.front.title);
    expect(text).toMatch(/Hit \d+ [A-Z][a-z]+ 2026/);
    expect(text).toMatch(/Version 1\.0\.\d of the report\./);
    expect(text).toContain(`Terms:\n${report.source.shop?.reuse.terms ?? 'Terms of reuse are not recorded'}`);
    expect(text).toContain(interestSentences(report.source).join(' '));
    if (report.source.front.inventedData) expect(text).toContain('Invented data.');
  });
});

test('README.txt warns of pictures older than a correction, and of a report that was replaced', () => {
  const corrected = oddOnes.find(({ source }) => source.slug === 'two-golfers-corrected');
  const replaced = oddOnes.find(({ source }) => source.slug === 'range-balls-replaced');
  if (corrected === undefined || replaced === undefined) throw new Error('no report');
  expect(termsText(corrected)).toContain(
    'Corrected 14 June 2026; pictures taken before that day are out of date.',
  );
  expect(termsText(replaced)).toContain('A newer report has replaced this one.');
  expect(termsText(corrected)).not.toContain('replaced');
});

test('licences stand by their names where the shop has them, and no mail is promised without an address', () => {
  const [licensed] = loadSite(
    manyReports(
      'name: A\naddress: https://a.example/\nreuse: {licence_charts: CC-BY-4.0, licence_data: CC0-1.0}\n',
    ),
  ).reports;
  const [bare] = loadSite(manyReports('name: A\n')).reports;
  if (licensed === undefined || bare === undefined) throw new Error('no report');
  expect(termsText(licensed)).toContain('Licence of the charts:\nCC-BY-4.0');
  expect(termsText(licensed)).toContain('Licence of the shots and findings:\nCC0-1.0');
  expect(termsText(licensed)).toContain('email.html');
  expect(termsText(bare)).not.toMatch(/Licence|email\.html/);
});

test('a shop that asks for more pictures is offered each, and printers the drawing alone', () => {
  const [report] = loadSite(
    manyReports('name: A\naddress: https://a.example/\nexports: [phone, other-units, square, print]\n'),
  ).reports.filter(({ source }) => source.front.status === 'published');
  const [first, second] = report === undefined ? [] : kitOf(report).offered;
  if (report === undefined || first === undefined || second === undefined) throw new Error('no charts');
  const names = (item: typeof first): readonly string[] =>
    pictureFiles(report, item.figure).flatMap(({ name, endings }) =>
      endings.map((ending) => `${name}.${ending}`),
    );
  expect(names(first)).toEqual(
    ['apart', 'apart-in-metres'].flatMap((stem) => [
      ...['', '-phone', '-square'].flatMap((form) => [`${stem}${form}.png`, `${stem}${form}.svg`]),
      `${stem}-print.svg`,
    ]),
  );
  expect(names(second).every((name) => !/square|print/.test(name))).toBe(true);
});
