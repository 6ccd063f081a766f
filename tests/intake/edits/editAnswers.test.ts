import { describe, expect, test } from 'vitest';
import type { AnswerEdit } from '../../../src/intake/edits/answerEdit.ts';
import { editAnswers, editReport } from '../../../src/intake/edits/editAnswers.ts';
import { withNarrative } from '../../../src/intake/edits/reportParts.ts';

const written = `# Who and what
title: 'Three  heads'   # two blanks are meant
date:

# Must be answered.
question:
varied: head
contenders:
  alder: {label: Alder 9, sold_here: 'no', price: {amount: 499, currency: GBP}}
  birch:
    label: Birch 9 # as on the sole
    match: [Birch, birch9]
    build:
primary: carry
exclusions:
  # The first of the day.
  - {contender: alder, shot: 1, rule: agreed, reason: 'cold, off the heel'}
  - contender: birch
    shot: 7
    reason: |
      A bird
      flew up.
hitters:
  one: {role: staff fitter}
status: draft
`;

/** The lines of the text that the edits change, before and after. */
function changedLines(edits: readonly AnswerEdit[], text = written) {
  const edited = editAnswers(text, edits);
  if ('refused' in edited) throw new Error(edited.refused);
  const [before, after] = [text.split('\n'), edited.text.split('\n')];
  let first = 0;
  while (first < before.length && before[first] === after[first]) first += 1;
  let last = 0;
  while (last < Math.min(before.length, after.length) - first && before.at(-1 - last) === after.at(-1 - last))
    last += 1;
  return {
    from: before.slice(first, before.length - last),
    to: after.slice(first, after.length - last),
  };
}

describe('an answer is edited in its own lines alone', () => {
  test.each<[string, AnswerEdit, readonly string[], readonly string[]]>([
    ['an empty answer', { path: ['date'], to: '2026-04-01' }, ['date:'], ['date: 2026-04-01']],
    [
      'an answer with a comment behind it',
      { path: ['title'], to: 'Two heads: a try' },
      ["title: 'Three  heads'   # two blanks are meant"],
      ["title: 'Two heads: a try'   # two blanks are meant"],
    ],
    ['an answer that is taken back', { path: ['varied'], to: '' }, ['varied: head'], ['varied:']],
    [
      'an answer in brackets',
      { path: ['contenders', 'alder', 'sold_here'], to: 'used' },
      ["  alder: {label: Alder 9, sold_here: 'no', price: {amount: 499, currency: GBP}}"],
      ['  alder: {label: Alder 9, sold_here: used, price: {amount: 499, currency: GBP}}'],
    ],
    [
      'a further answer in brackets',
      { path: ['contenders', 'alder', 'price', 'on'], to: '2026-04-11' },
      ["  alder: {label: Alder 9, sold_here: 'no', price: {amount: 499, currency: GBP}}"],
      ["  alder: {label: Alder 9, sold_here: 'no', price: {amount: 499, currency: GBP, on: 2026-04-11}}"],
    ],
    [
      'an answer taken out of brackets',
      { path: ['contenders', 'alder', 'label'], to: null },
      ["  alder: {label: Alder 9, sold_here: 'no', price: {amount: 499, currency: GBP}}"],
      ["  alder: {sold_here: 'no', price: {amount: 499, currency: GBP}}"],
    ],
    [
      'the last answer in brackets taken out',
      { path: ['contenders', 'alder', 'price'], to: null },
      ["  alder: {label: Alder 9, sold_here: 'no', price: {amount: 499, currency: GBP}}"],
      ["  alder: {label: Alder 9, sold_here: 'no'}"],
    ],
    [
      'a block under an empty key',
      { path: ['contenders', 'birch', 'build', 'loft'], to: '9°' },
      [],
      ['      loft: 9°'],
    ],
    [
      'a key that is not there',
      { path: ['contenders', 'birch', 'sold_here'], to: 'new' },
      [],
      ['    sold_here: new'],
    ],
    [
      'blocks that are not there',
      { path: ['conditions', 'ball', 'state'], to: 'new' },
      [],
      ['conditions:', '  ball:', '    state: new'],
    ],
    [
      'a key beside the one that it belongs to',
      { path: ['summary'], to: 'Short.', after: 'title' },
      [],
      ["summary: 'Short.'"],
    ],
    [
      'a further entry of a list',
      { path: ['exclusions', 2], to: { contender: 'alder', shot: '4', rule: 'agreed', reason: 'topped' } },
      [],
      ['  - {contender: alder, shot: 4, rule: agreed, reason: topped}'],
    ],
    [
      'an entry taken out of a list',
      { path: ['exclusions', 1], to: null },
      ['  - contender: birch', '    shot: 7', '    reason: |', '      A bird', '      flew up.'],
      [],
    ],
    [
      'an answer in many lines',
      { path: ['exclusions', 1, 'reason'], to: 'A bird' },
      ['    reason: |', '      A bird', '      flew up.'],
      ['    reason: A bird'],
    ],
    ['a key taken out', { path: ['primary'], to: null }, ['primary: carry'], []],
    [
      'a list in place of one',
      { path: ['primary'], to: ['carry', 'side'] },
      ['primary: carry'],
      ['primary: [carry, side]'],
    ],
    [
      'markup and signs of YAML',
      { path: ['question'], to: '"9°", <b>&: [x] # {y}?' },
      ['question:'],
      [`question: '"9°", <b>&: [x] # {y}?'`],
    ],
    [
      'the first key of an entry, by writing the entry anew',
      { path: ['exclusions', 1, 'contender'], to: null },
      ['  - contender: birch', '    shot: 7', '    reason: |', '      A bird', '      flew up.'],
      ['  - {shot: 7, reason: "A bird\\nflew up.\\n"}'],
    ],
  ])('%s', (_, edit, from, to) => {
    expect(changedLines([edit])).toEqual({ from, to });
  });

  test('several edits one after another', () => {
    const edited = editAnswers(written, [
      { path: ['status'], to: 'published' },
      { path: ['published'], to: '2026-04-03', after: 'status' },
      { path: ['question'], to: 'Which?' },
    ]);
    expect(edited).toEqual({
      text: written
        .replace('question:', "question: 'Which?'")
        .replace('status: draft\n', 'status: published\npublished: 2026-04-03\n'),
    });
  });

  test('an answer that stays the same changes nothing', () => {
    expect(editAnswers(written, [{ path: ['title'], to: 'Three  heads' }])).toEqual({ text: written });
    expect(editAnswers(written, [{ path: ['published'], to: null }])).toEqual({ text: written });
  });

  test('a first answer', () => {
    expect(editAnswers('# Nothing yet\n', [{ path: ['name'], to: 'A shop' }])).toEqual({
      text: '# Nothing yet\nname: A shop\n',
    });
  });
});

describe('what cannot be edited is refused, and says why', () => {
  test('below an answer in words', () => {
    expect(editAnswers(written, [{ path: ['primary', 'metric'], to: 'x' }])).toEqual({
      refused: 'primary.metric lies below an answer in words, or in no list. Change it in the file itself.',
    });
  });
  test('answers that cannot be read', () => {
    expect(editAnswers('a: [1\nb: 2\n', [{ path: ['b'], to: '3' }])).toEqual({
      refused: 'The answers cannot be read as they stand. Mend what is reported first.',
    });
  });
  test('a file without answers', () => {
    expect(editReport('Nothing but words.', [{ path: ['b'], to: '3' }])).toEqual({
      refused: 'The file has no answers between two lines of dashes.',
    });
  });
});

describe('a report keeps what is not edited', () => {
  const report = '\uFEFF---\r\ntitle: One # so\r\nstatus: draft\r\n---\r\n\r\nWords: kept.\r\n---\r\n';
  test('byte order mark, line breaks and narrative', () => {
    expect(
      editReport(report, [
        { path: ['status'], to: 'published' },
        { path: ['published'], to: '2026-04-03' },
      ]),
    ).toEqual({
      text: '\uFEFF---\r\ntitle: One # so\r\nstatus: published\r\npublished: 2026-04-03\r\n---\r\n\r\nWords: kept.\r\n---\r\n',
    });
  });
  test('all answers, where the narrative is another one', () => {
    expect(withNarrative(report, 'New.\n\nTwo.\n')).toBe(
      '\uFEFF---\r\ntitle: One # so\r\nstatus: draft\r\n---\r\nNew.\r\n\r\nTwo.\r\n',
    );
  });
});

describe('an answer after which nothing could be read any more', () => {
  test('is refused, and why', () => {
    const edited = editAnswers('title: One\nquestion:\n', [{ path: ['question'], to: 'x'.repeat(70_000) }]);
    expect('refused' in edited ? edited.refused : edited.text).toMatch(
      /^The answers could not be read any more\. .*at most 60000 characters.*into the narrative\.$/,
    );
  });

  test('is not what keeps a file from being mended that cannot be read as it is', () => {
    const long = `title: One\nquestion: ${'x'.repeat(70_000)}\n`;
    expect(editAnswers(long, [{ path: ['title'], to: 'Two' }])).toEqual({
      text: long.replace('One', 'Two'),
    });
  });
});
