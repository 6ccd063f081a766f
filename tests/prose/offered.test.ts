import { describe, expect, test } from 'vitest';
import { madeReport, reportOf } from '../findings/reportOf.ts';

describe('a sentence that a problem offers', () => {
  test.each([
    [
      'a comparison that no claim bears out',
      'We liked both. Birch went farther than Cedar. It was dry.',
      'Birch went farther than Cedar.',
    ],
    [
      'one that the shots speak against',
      'It was dry.\n\n- Cedar carried farther than Alder.\n- And so on.',
      'Cedar carried farther than Alder.',
    ],
    [
      'two that are called alike',
      'Alder and Birch are identical. It was dry.',
      'Alder and Birch are identical.',
    ],
    ['advice', 'It was *dry*. We recommend **Alder** over Cedar.', 'We recommend **Alder** over Cedar.'],
  ])('stands in its place, taken as it is, and then nothing is wrong: %s', (_name, narrative, instead) => {
    const [problem] = madeReport({ narrative }).problems.filter(({ offered }) => offered !== undefined);
    const { offered } = problem ?? {};
    expect(offered?.instead).toBe(instead);
    expect(offered?.text).toMatch(/^\{\{ answer carry \w+ \w+ \}\}$/);
    expect(narrative.split(instead)).toHaveLength(2);
    const taken = narrative.replace(instead, offered?.text ?? '');
    const { problems } = madeReport({ narrative: taken });
    expect(problems.filter(({ line }) => line !== null && line > 12)).toEqual([]);
    // What is printed there is what was said that it prints.
    const printed = reportOf({ narrative: taken }).narrativeHtml.replace(/<[^>]*>/g, '');
    expect(printed).toContain(offered?.prints.replace(/\.$/, ''));
  });

  test('is the sentence itself where none can be referred to', () => {
    const [problem] = madeReport({ front: { title: 'Alder is the winner' } }).problems.filter(
      ({ offered }) => offered !== undefined,
    );
    expect(problem?.columnName).toBe('title');
    expect(problem?.offered?.text).toBe(problem?.offered?.prints);
    expect(problem?.offered?.besides).not.toContain('Ready to take');
    expect(problem?.cure).toContain(`Ready to take in its place: "${problem?.offered?.prints ?? ''}"`);
  });

  test('goes with a claim that may not stand', () => {
    const claims = '\n  - {say: Cedar wins against Alder, metric: carry, more: cedar, than: alder}';
    const [problem] = madeReport({ front: { claims } }).problems.filter(
      ({ kind }) => kind === 'claim-contradicted',
    );
    expect(problem?.offered).toEqual({
      instead: 'Cedar wins against Alder',
      text: '{{ answer carry cedar alder }}',
      prints: 'Alder carried farther than Cedar: about 12 yards, likely 7 to 17.',
      besides: 'Take the claim out.',
    });
  });
});
