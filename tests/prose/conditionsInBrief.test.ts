import { describe, expect, test } from 'vitest';
import { conditionsInBrief } from '../../src/prose/english/conditionsInBrief.ts';
import { reportOf } from '../findings/reportOf.ts';

type Invented = Parameters<typeof reportOf>[0];

function wordsOf(invented: Invented): Readonly<Record<string, string | null>> {
  const { source, session, telling } = reportOf(invented);
  return Object.fromEntries(
    conditionsInBrief(source, session, telling).map(({ label, words }) => [label, words]),
  );
}

const golfer = (seen: string): Invented => ({
  front: { hitters: `{one: {role: staff fitter, hand: right, consent: yes${seen}}}` },
});

describe('the conditions that a reader needs', () => {
  test('with the fewest answers say what is not recorded, and nothing that nobody said', () => {
    expect(wordsOf({ front: { hitters: '{one: {role: staff fitter, consent: yes}}', held: null } })).toEqual({
      'Who hit': 'One golfer (staff fitter); club speed is not recorded.',
      Where: null,
      Monitor: null,
      Ball: null,
      Order: expect.stringMatching(/^12 shots with each head, in /) as string,
    });
  });

  test('name place, monitor and ball in one sentence each', () => {
    const words = wordsOf({
      front: {
        conditions:
          '{place: indoors, surface: mat, temperature: 19 °C, altitude: 60 m, wind: none, ball: {model: Wren, state: new, same_for_all: yes}, monitor: {kind: camera unit, normalised_to: sea level, stated_accuracy: 1 yard}}',
        held: '{shaft: one 65 g shaft, length: 45 in}',
      },
    });
    expect(words).toMatchObject({
      Where: 'Indoors; mat; 19 °C; wind none; altitude 60 m.',
      Monitor: 'Camera unit; distances corrected to sea level; accuracy as stated: 1 yard.',
      Ball: 'Wren; new; the same for all.',
      'The same for all': 'Shaft: one 65 g shaft; length: 45 in.',
    });
  });

  test('say so where the ball was not the same, and name tee, target, flight and last check', () => {
    const words = wordsOf({
      front: {
        conditions:
          '{place: on the range, surface: turf, tee: 40 mm, target: a flag at 200 yards, ball: {model: Wren, same_for_all: no}, monitor: {kind: radar, flight: whole, last_check: in March}}',
      },
    });
    expect(words).toMatchObject({
      Where: 'On the range; turf; tee 40 mm; target a flag at 200 yards.',
      Monitor: 'Radar; flight seen: whole; last checked in March.',
      Ball: 'Wren; not the same for all.',
    });
  });

  test.each([
    ['', ''],
    [', saw_club: yes', ' The golfer could see which head it was.'],
    [', saw_numbers: no', ' The golfer could not see the numbers.'],
    [', saw_club: yes, saw_numbers: no', ' The golfer could see which head it was, but not the numbers.'],
    [', saw_club: no, saw_numbers: yes', ' The golfer could see the numbers, but not which head it was.'],
    [', saw_club: yes, saw_numbers: yes', ' The golfer could see which head it was and the numbers.'],
    [', saw_club: no, saw_numbers: no', ' The golfer could see neither which head it was nor the numbers.'],
  ])('what the golfer saw: %s', (seen, words) => {
    expect(wordsOf(golfer(seen))['Who hit']).toBe(
      `One right-handed golfer (staff fitter); club speed is not recorded.${words}`,
    );
  });

  test('each reason for leaving shots out stands once, with its number of shots', () => {
    const words = wordsOf({
      front: {
        exclusions:
          '[{contender: alder, shot: 1, rule: misread, reason: no ball seen}, {contender: birch, shot: 2, rule: misread, reason: no ball seen}, {contender: alder, shot: 4, rule: outside event, reason: a mower passed}]',
      },
    });
    expect(words['Left out']).toBe(
      'Two shots: misread, no ball seen; one shot: outside event, a mower passed.',
    );
    expect(wordsOf({})['Left out']).toBeUndefined();
  });
});
