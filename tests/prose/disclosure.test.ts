import { describe, expect, test } from 'vitest';
import { disclosure } from '../../src/prose/disclosure.ts';
import { recorded } from '../../src/prose/disclosureGroup.ts';
import { dateInWords } from '../../src/prose/date.ts';
import { usualInterest } from '../../src/prose/english/usualInterest.ts';
import { readShop } from '../../src/intake/authored/readShop.ts';
import { reportOf } from '../findings/reportOf.ts';

type Invented = Parameters<typeof reportOf>[0];

/** Group and label of every line, with what is printed; what is not recorded is null. */
function linesOf(invented: Invented): ReadonlyMap<string, string | null> {
  const groups = disclosure({ ...reportOf(invented), version: '0' });
  return new Map(
    groups.flatMap(({ title, items }) => items.map(({ label, value }) => [`${title}: ${label}`, value])),
  );
}

describe('the list of conditions', () => {
  test.each([
    ['head', ''],
    ['shaft length', 'Length'],
    ['shaft', 'Shaft'],
    ['loft setting', 'Stated loft, Measured loft, Adjustable settings'],
    ['lie angle', 'Stated lie'],
    ['ball', ''],
  ])('what differed is not asked of what was the same: %s', (varied, left) => {
    const asked = (front: Readonly<Record<string, string>>): readonly string[] =>
      disclosure({ ...reportOf({ front }), version: '0' })
        .filter(({ title }) => title.startsWith('What was the same'))
        .flatMap(({ items }) => items.map(({ label }) => label));
    const all = asked({ varied: 'head' });
    expect(all.filter((label) => !asked({ varied }).includes(label)).join(', ')).toBe(left);
  });

  test.each([
    ['head', 'head'],
    ['grooves', 'set of grooves'],
  ])('what was held, of one: %s', (varied, one) => {
    const groups = disclosure({ ...reportOf({ front: { varied } }), version: '0' });
    expect(groups.map(({ title }) => title)).toContain(`What was the same for every ${one}`);
  });

  test('with the fewest answers that pass prints nothing that nobody said', () => {
    const said = [
      ...linesOf({ front: { hitters: '{one: {role: staff fitter, consent: yes}}', matters: null } }),
    ]
      .filter(([, value]) => value !== null)
      .map(([key, value]) => `${key} = ${value ?? ''}`);
    expect(said).toEqual([
      'Who hit: Golfers = one golfer',
      'Who hit: Who = staff fitter',
      'Who hit: Agreed to be shown = yes',
      'Shots: Shots recorded = 12 with Alder, 12 with Birch, 12 with Cedar',
      expect.stringMatching(/^Shots: Order = /),
      'Shots: Left out = none',
      'Monitor: Measured or calculated = not stated; treated as measured: carry',
      'Alder 9°: Supplied by = our stock',
      'Alder 9°: Sold here = new',
      'Birch 9°: Supplied by = lent by its distributor',
      'Birch 9°: Sold here = new',
      'Cedar 9°: Supplied by = our used stock',
      'Cedar 9°: Sold here = used',
      'Money: Who paid for the test = the shop',
      'Money: Commission, sponsorship or gifts = none',
      'Money: Who saw it before publication = nobody outside the shop',
      'Record: Date of the session = 11 April 2026',
      expect.stringMatching(/^Record: Data = /),
      'Record: Calculated by = Straightface 0',
      'Record: Corrections = none so far',
    ]);
  });

  test('indoors alone does not say that there was no wind', () => {
    expect(linesOf({ front: { conditions: '{place: indoors}' } }).get('Place: Wind')).toBeNull();
  });

  test('prints target, software, usual club, what the golfer expected and the day of consent', () => {
    const lines = linesOf({
      front: {
        conditions: '{target: a flag at 240 yards, monitor: {software: version 7.1}}',
        hitters:
          '{one: {role: customer, usual_club: a driver of 10.5°, expectation: that Alder goes far, consent: "yes, 2026-04-02"}}',
      },
    });
    expect(lines.get('Place: Target')).toBe('a flag at 240 yards');
    expect(lines.get('Monitor: Software')).toBe('version 7.1');
    expect(lines.get('Who hit: Usual club')).toBe('a driver of 10.5°');
    expect(lines.get('Who hit: Expected by who hit')).toBe('that Alder goes far');
    expect(lines.get('Who hit: Agreed to be shown')).toBe('yes, on 2 April 2026');
  });

  test('writes days as the shop’s locale does', () => {
    const invented = { shop: 'name: Shop\ndefaults: {locale: en-US}\n' };
    expect(linesOf(invented).get('Record: Date of the session')).toBe('April 11, 2026');
    expect(dateInWords('2026-04-11', 'en-NZ')).toBe('11 April 2026');
    expect(dateInWords('one day', 'en-US')).toBe('one day');
  });
});

describe('the interest of every report, as shop.yaml has it', () => {
  const told = (interests: string): readonly string[] =>
    usualInterest(readShop('shop.yaml', `name: Shop\ninterests: {${interests}}\n`).shop?.interests ?? {});

  test('what it does not say is not recorded', () => {
    expect(told('')).toEqual([
      'Who usually pays for a test is not recorded here.',
      'Whether we usually take commission, sponsorship or gifts is not recorded here.',
      'Who usually sees a report before you do is not recorded here.',
    ]);
  });

  test('what it says', () => {
    expect(
      told(
        'paid_by: the shop itself, commission_or_gifts: none taken, seen_before: nobody, sentence: we cut shafts',
      ),
    ).toEqual([
      'We cut shafts.',
      'We usually pay for our tests ourselves.',
      'We usually take no commission, sponsorship or gifts.',
      'Nobody outside the shop usually sees a report before you do.',
    ]);
    expect(told('paid_by: the makers, commission_or_gifts: none known, seen_before: the customer')).toEqual([
      'Our tests are usually paid for by the makers.',
      'Of commission, sponsorship and gifts we state: “none known”.',
      'Before publication our reports are usually seen by the customer.',
    ]);
  });
});

test('what is missing from several of them is told of them together', () => {
  const without = (title: string, ...labels: string[]) => ({
    title,
    items: [...labels.map((label) => ({ label, value: null })), { label: 'Loft', value: '9°' }],
  });
  expect(
    recorded([without('Alder', 'Specimen'), without('Birch', 'Specimen'), without('Place', 'Wind', 'Tee')]),
  ).toEqual({
    answered: 3,
    all: 7,
    missing: ['Alder and Birch: specimen', 'Place: wind, tee'],
  });
});
