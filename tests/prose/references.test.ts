import { describe, expect, test } from 'vitest';
import { renderNarrative } from '../../src/prose/narrative.ts';
import { resolveReference } from '../../src/prose/references.ts';
import type { Telling } from '../../src/prose/telling.ts';
import { around, reportOf } from '../findings/reportOf.ts';

const report = reportOf({
  shots: {
    'Carry (yd)': {
      alder: around(237.4),
      birch: around(231.5).toReversed(),
      cedar: [...around(225.6).slice(6), ...around(225.6).slice(0, 6)],
    },
    'Spin Rate (rpm)': { alder: around(2600, 90), birch: around(2640, 90), cedar: around(4500, 90) },
  },
});

function value(reference: string, telling: Telling = report.telling): string {
  const resolved = resolveReference(reference.split(' '), telling, ['shots']);
  return resolved.kind === 'text' ? resolved.text : JSON.stringify(resolved);
}

describe('a value of the narrative', () => {
  // A step of a yard for spreads and limits; averages a digit finer, as 237 less 226 would not be the 12 of the answer.
  test.each([
    ['mean carry alder', '237.4 yards'],
    ['sd carry alder', '5 yards'],
    ['shots alder', '12'],
    ['apart carry alder cedar', 'about 12 yards, likely 7 to 17'],
    ['apart carry cedar alder', 'about 12 yards, likely 7 to 17'],
    ['answer carry alder cedar', 'Alder carried farther than Cedar: about 12 yards, likely 7 to 17'],
    [
      'answer spin_rate alder birch',
      'we cannot tell whether Birch or Alder spun more: anything from 500 rpm for Birch to 400 for Alder',
    ],
    ['apart spin_rate alder birch', 'anything from 500 rpm for Birch to 400 for Alder'],
  ])('%s', (reference, words) => {
    expect(value(reference)).toBe(words);
  });

  test('in metres by its own step', () => {
    expect(value('apart carry alder cedar', { ...report.telling, system: 'metres' })).toBe(
      'about 11 metres, likely 6 to 16',
    );
  });

  test('of two that were not judged nothing is apart, and the answer says why', () => {
    const { telling } = reportOf({
      shots: { 'Carry (yd)': { alder: around(237), birch: around(231), cedar: [225, 226, 224, 227] } },
    });
    expect(value('apart carry alder cedar', telling)).toContain('apart of two that were judged');
    expect(value('answer carry alder cedar', telling)).toBe('we did not judge Cedar: four shots are too few');
  });
});

test('an answer that begins a sentence begins with a capital', () => {
  const html = (text: string): string =>
    renderNarrative({ file: 'report.md', text, firstLine: 1 }, report.telling, {}, []).html;
  const apart = '{{ answer spin_rate alder birch }}';
  expect(html(`${apart}.`)).toMatch(/^<p>We cannot tell /);
  expect(html(`It was windy. ${apart}.`)).toContain('windy. We cannot tell ');
  expect(html(`So it was: ${apart}.`)).toContain('was: we cannot tell ');
  expect(html(`Neither gained, as ${apart}.`)).toContain('as we cannot tell ');
});

test('a chart of prices has gone: the message says where they stand and what to do', () => {
  const text = 'What it costs: {{ chart price }}';
  const { problems } = renderNarrative(
    { file: 'report.md', text, firstLine: 1 },
    report.telling,
    { apart: '' },
    [],
  );
  expect(problems).toMatchObject([
    {
      kind: 'unknown-reference',
      expected: 'no chart of prices: they stand in the table of all averages, side by side',
      found: '{{ chart price }}',
      cure: 'Take the reference out.',
    },
  ]);
});
