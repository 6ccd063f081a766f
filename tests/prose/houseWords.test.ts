import { describe, expect, test } from 'vitest';
import { forbiddenIn, forbiddenWords, readersText } from '../site/houseWords.ts';

describe('words that reach no reader', () => {
  test.each(forbiddenWords)('$example', ({ pattern, example }) => {
    expect(pattern.test(` ${example} `)).toBe(true);
  });

  test.each([
    'Alder carried farther than Birch: about 12 yards, likely 9 to 15.',
    'The fairway wood and the hybrid: anything from 7 yards for the fairway wood to 6 for the hybrid.',
    'A split this uneven would turn up in about 7 tests of 100.',
    'We met the golfer at noon; she read the sheet and returned it.',
    'Alder: cannot tell against any.',
    'Ranges hold at 95%.',
    'Fair-test checks: 8 yes, 3 no, 3 not recorded',
    'The ring lies on the side of the ball that carried farther.',
  ])('passes: %s', (sentence) => {
    expect(forbiddenIn(sentence)).toEqual([]);
  });
});

describe('what a reader reads of a file', () => {
  test.each([
    ['a word across elements of a line', '<p>Count<b>ed by tu</b>rns</p>', 'Counted by turns'],
    ['the words for a picture', '<img src="/a.png" alt="Two hitters">', 'Two hitters'],
    ['the description of a page', '<meta name="description" content="Two hitters">', 'Two hitters'],
    ['text of a picture', '<svg><text>Two</text><text><tspan>hit</tspan>ters</text></svg>', 'hitters'],
    ['markup within a feed', '<content>&lt;p&gt;Two hitters&lt;/p&gt;</content>', 'Two hitters'],
  ])('%s', (_what, file, words) => {
    expect(readersText(file)).toContain(words);
  });

  test.each([
    ['code', '<p>Key <code>hitters</code></p>'],
    ['keys of files', '<details data-file-words><summary>Every key</summary><td>hitters</td></details>'],
    ['an address', '<p><a href="/contenders/heron/">https://example.test/contenders/heron/</a></p>'],
    ['names of files', 'charts/hitters.png, charts/hitters-phone.svg'],
    ['scripts', '<script>const hitters = 1;</script>'],
  ])('not %s', (_what, file) => {
    expect(forbiddenIn(readersText(file))).toEqual([]);
  });
});
