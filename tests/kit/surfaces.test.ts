import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { answersAlone } from '../../src/kit/answersAlone.ts';
import { stripSentences } from '../../src/kit/caveatStrip.ts';
import { emailParts } from '../../src/kit/emailParts.ts';
import { emailText } from '../../src/kit/emailText.ts';
import { reportItems } from '../../src/kit/feed.ts';
import { headline } from '../../src/kit/headline.ts';
import { interestInBrief } from '../../src/kit/interestInShort.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import type { Report } from '../../src/kit/report.ts';
import { textOf, type Said } from '../../src/kit/said.ts';
import { standingInBrief } from '../../src/prose/english/kit/standing.ts';
import { reports } from './content.ts';

/** What leaves the site in words, of three reports that differ most, held beside what was read and approved as text. */
const shown = ['two-clubs-for-200', 'fairway-woods-two-golfers', 'inch-off-the-driver'] as const;

const absolute = (path: string): string => `https://example.test${path}`;

function golden(slug: string, file: string): string {
  const path = resolve('tests/kit/golden', slug, file);
  // A golden that is missing would be written anew, and the test could not fail.
  expect(process.env['GOLDENS'] === 'write' || existsSync(path)).toBe(true);
  return path;
}

/** About as much as three lines of a picture hold. */
const threeLines = (said: readonly Said[]): boolean => textOf(said).length < 200;

function captionsOf(report: Report): string {
  const { offered, notOffered } = kitOf(report);
  const items = offered.map(({ figure, title, captions, alt }) =>
    [
      `# ${title}`,
      ...Object.entries(captions).map(([length, words]) => `${length}: ${words}`),
      `over the picture: ${textOf(headline(report, figure, threeLines))}`,
      'under the picture:',
      ...stripSentences(report, figure, () => true).map(({ text }) => `  ${text}`),
      `alternative text: ${alt}`,
    ].join('\n'),
  );
  const left = notOffered.map(({ question, why }) => `${question} ${why}`);
  return `${[...items, ['# Not offered', ...left].join('\n')].join('\n\n')}\n`;
}

describe.each(shown)('%s', (slug) => {
  const report = reports.find(({ source }) => source.slug === slug);
  if (report === undefined) throw new Error(slug);

  test('captions, pictures and alternative texts', async () => {
    await expect(captionsOf(report)).toMatchFileSnapshot(golden(slug, 'captions.txt'));
  });

  test('mail', async () => {
    await expect(emailText(emailParts(report, absolute))).toMatchFileSnapshot(golden(slug, 'mail.txt'));
  });

  test('entry of the feed and text of a shared link', async () => {
    const [item] = reportItems([report], absolute);
    const { front } = report.source;
    const shared = `${standingInBrief(front)} ${answersAlone(report)[0] ?? ''} ${interestInBrief(report)}`;
    await expect(
      [item?.title, item?.description, '', 'shared:', shared.trim(), ''].join('\n'),
    ).toMatchFileSnapshot(golden(slug, 'feed-and-share.txt'));
  });
});
