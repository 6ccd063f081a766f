import { expect, test } from 'vitest';
import { cardWords, findingWithin } from '../../src/kit/cardWords.ts';
import { sayRingAndBar } from '../../src/prose/english/kit/cardWords.ts';
import { reports } from './content.ts';

function wordsOf(slug: string) {
  const report = reports.find(({ source }) => source.slug === slug);
  if (report === undefined) throw new Error(slug);
  return cardWords(report);
}

test('a caution of some pairs says of which, and one of all does not', () => {
  expect(wordsOf('three-irons-after-work').caution?.brief).toBe(
    'With each spell counted as one shot, we cannot tell Nettle and Teasel apart in carry.',
  );
  expect(wordsOf('inch-off-the-driver').caution?.brief).toBe(
    'For Long and Short, the swing differed too: it may not be the length.',
  );
  expect(wordsOf('three-balls-one-iron').caution?.brief).toBe('Carry calculated, not watched.');
});

test('only a caution under which the answer would be another one decides', () => {
  expect(wordsOf('hybrids-at-a-demo-day').caution).toMatchObject({
    brief: 'Without one stray shot we cannot tell Juniper 4 and Larch 4 apart in carry.',
    decides: true,
  });
  expect(wordsOf('three-balls-one-iron').caution?.decides).toBe(false);
});

test.each([
  [{ open: false, band: true }, 'Ring: best estimate. Bar: likely range. Hatched: too small to matter.'],
  [{ open: false, band: false }, 'Ring: best estimate. Bar: likely range.'],
  [
    { open: true, band: true },
    'Ring: best estimate. Bar: likely range, not filled as the cause is unclear. Hatched: too small to matter.',
  ],
])('ring and bar of %j are explained', (drawn, words) => {
  expect(sayRingAndBar(drawn)).toBe(words);
});

test('pairs are told in the order in which they are drawn, with what they were judged by', () => {
  expect(wordsOf('three-balls-one-iron').pairs).toEqual([
    'Heron over Wren: about 12 yards, likely 8 to 15.',
    'Heron over Plover: about 5 yards, likely between almost nothing and 10.',
    'Plover over Wren: about 7 yards, likely 1 to 12.',
  ]);
});

test('changes stand apart from the stamp, and the version counts them', () => {
  expect(wordsOf('three-irons-after-work')).toMatchObject({
    stamp: 'Invented data.',
    changes: 'Corrected 2 April 2026.',
    where: 'example.test/reports/three-irons-after-work, version 1.0.1',
  });
});

test('the finding that tells most within a number of words is taken, else the shortest', () => {
  const told = { findings: ['one two three four', 'one two three', 'one two'] };
  expect(findingWithin(told, 4)).toBe('one two three four');
  expect(findingWithin(told, 3)).toBe('one two three');
  expect(findingWithin(told, 1)).toBe('one two');
});
