// Names of hitters are in the session files and under `match`; they must reach no page, no file name, no address.
import { describe, expect, test } from 'vitest';
import { likePerson, namesPerson, personNames } from '../../../src/intake/privacy/hitterNames.ts';
import { checkedSite } from '../../../src/site/checkedSite.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../../commands/contentFolder.ts';

const withPlayer = (player: string): string =>
  twoHeadsCsv
    .trimEnd()
    .split('\n')
    .map((line, index) => `${line},${index === 0 ? 'Player' : player}`)
    .join('\n')
    .concat('\n');

interface Told {
  readonly slug?: string;
  readonly file?: string;
  readonly player?: string;
  readonly front?: (front: string) => string;
  readonly narrative?: string;
}

function problemsOf({
  slug = 'two-heads',
  file = 'shots.csv',
  player = 'John Smith',
  front,
  narrative = '',
}: Told) {
  const matched = (text: string): string =>
    text
      .replace('consent: yes', `consent: yes, match: [${JSON.stringify(player)}]`)
      .replace('session: shots.csv', `session: ${JSON.stringify(file)}`);
  const root = contentFolder({
    'shop.yaml': shop,
    [`reports/${slug}/report.md`]: `${twoHeads((text) => (front ?? ((same) => same))(matched(text)))}\n${narrative}\n`,
    [`reports/${slug}/${file}`]: withPlayer(player),
  });
  return checkedSite(root).problems;
}

const found = (told: Told) => problemsOf(told).filter(({ kind }) => kind === 'hitter-named');

const lines = (told: Told): readonly string[] =>
  found(told).map(({ severity, line, found: what, cure }) => `${severity} ${line} ${what} ${cure}`);

describe('the name of a hitter', () => {
  const name = 'a name that the session files have for a hitter';

  test('is an error wherever it would be published, with what to do', () => {
    expect(lines({})).toEqual([]);
    expect(lines({ file: 'John Smith driver 2026-04-11.csv' })).toEqual([
      `error 11 ${name}, in the name of the file, which is published Rename the file, for example to session.csv, here and beside report.md.`,
    ]);
    expect(lines({ slug: 'john-smith-driver' })).toEqual([
      `error null ${name}, in the name of the folder, which becomes the address Rename the folder of the report, for example to driver-test.`,
    ]);
    const role = 'Write the role in place of the name, such as "the staff fitter", or leave it out.';
    expect(lines({ front: (text) => text.replace('title: Two heads', "title: Smith's two heads") })).toEqual([
      `error 2 ${name}, in the title ${role}`,
    ]);
    expect(
      lines({ front: (text) => text.replace('status:', 'summary: John Smith hit both.\nstatus:') }),
    ).toEqual([`error 15 ${name}, in the summary ${role}`]);
    expect(
      lines({ front: (text) => text.replace('label: Birch', 'label: "John Smith\'s driver", match: Birch') }),
    ).toEqual([`error 8 ${name}, in a label ${role}`]);
    expect(lines({ narrative: 'In the morning Smith hit first.' })).toEqual([
      `error 20 ${name}, in the narrative Write the role in place of the name, such as "the staff fitter" or "this golfer".`,
    ]);
  });

  test('is a warning in a draft, and never repeated', () => {
    const inDraft = found({
      slug: 'smith',
      front: (text) => text.replace('status: published', 'status: draft'),
    });
    expect(inDraft.map(({ severity }) => severity)).toEqual(['warning']);
    expect(JSON.stringify(inDraft.map(({ file: _, ...rest }) => rest))).not.toMatch(/smith/i);
  });

  test('is known by match alone, in other casing and with other accents', () => {
    expect(found({ player: 'José Núñez', file: 'jose nunez.csv' })).toHaveLength(1);
    expect(found({ player: 'Annika', file: 'annika-irons.csv' })).toHaveLength(1);
    expect(found({ player: '田中', file: '田中 driver.csv' })).toHaveLength(1);
  });

  const published = (line: string) => (text: string) => text.replace(/^status:/m, `${line}\nstatus:`);
  test.each<readonly [place: string, told: Told, line: number | null]>([
    [
      'in an id, which addresses and tables of data bear',
      { front: (text) => text.replace('{one:', '{smith:') },
      12,
    ],
    [
      'in an id, which addresses and tables of data bear',
      { front: (text) => text.replace('  birch: {', '  smiths-driver: {match: Birch, ') },
      8,
    ],
    [
      'in a label',
      { front: (text) => text.replace('label: Birch', "label: Smith's driver, match: Birch") },
      8,
    ],
    [
      'in a claim',
      {
        front: published(
          'claims: [{say: Smith hit Alder farther, metric: carry, more: alder, than: birch, allow_unproven: yes}]',
        ),
      },
      15,
    ],
    [
      'in a correction',
      {
        front: published('corrections: [{date: 2026-05-03, what: who hit, was: John Smith, now: a fitter}]'),
      },
      15,
    ],
    [
      'in a reply',
      { front: published('replies: [{from: the maker, date: 2026-05-03, text: Smith has a bad back.}]') },
      15,
    ],
    [
      'in a build sheet',
      { front: (text) => text.replace('sold_here: new', 'sold_here: new, build: {also: {owner: J. Smith}}') },
      7,
    ],
    ['in what was held the same', { front: published('held: {grip: the grip of Mr Smith}') }, 15],
    ['in the conditions', { front: published('conditions: {place: "indoors, Smith\'s bay"}') }, 15],
    [
      'in what is said of interests',
      { front: (text) => text.replace('gifts: none', 'gifts: "Smith pays for our balls"') },
      13,
    ],
    [
      'in the plan',
      { front: published('plan: {date: 2026-05-01, exclusion_rule: whatever Smith calls a mishit}') },
      15,
    ],
    [
      'in the reason of an exclusion',
      {
        front: published(
          'exclusions: [{contender: birch, shot: 2, rule: shots that Smith calls off, reason: called off}]',
        ),
      },
      15,
    ],
    ['in the narrative', { narrative: 'In the morning S*mi*th hit first.' }, 20],
    ['in the narrative', { narrative: '![Smith in the bay](bay.jpg)' }, 20],
    ['in the narrative', { player: 'Mark Long', narrative: 'Then came Mark\nLong, who hit first.' }, 20],
  ])('is found %s', (place, told, line) => {
    const problems = found(told);
    expect(problems.map(({ severity, line: at, found: what }) => [severity, at, what])).toEqual([
      ['error', line, `${name}, ${place}`],
    ]);
  });

  test.each<readonly [what: string, told: Told]>([
    ['a number', { player: 'G1', file: 'g1-shots.csv' }],
    ['a role', { player: 'Staff fitter', narrative: 'The Staff fitter hit first.' }],
    ['a hand', { player: 'Left-hander', slug: 'left-hander' }],
    ['one of several', { player: 'Player 2', file: 'player 2.csv' }],
    [
      'a word of the trade',
      { player: 'Mark Long', file: 'long-drivers.csv', narrative: 'We mark long shots.' },
    ],
    ['the name of a head', { player: 'Alder', slug: 'alder-and-birch', narrative: 'Alder carried on.' }],
    ['a name shared with a head', { player: 'Birch Miller', narrative: 'Birch was hit first.' }],
    ['a small word', { player: 'Sunny Carter', narrative: 'It was sunny, and carter is a trade.' }],
  ])('is not found in %s', (_, told) => {
    expect(found(told)).toEqual([]);
  });
});

test('a role of two capitalised words of no trade is asked about, and keeps no report back', () => {
  const asRole = (role: string) =>
    lines({ player: 'Golfer A', front: (text) => text.replace('role: staff fitter', `role: ${role}`) });
  expect(asRole('Ann Meier')).toEqual([
    expect.stringMatching(
      /^warning \d+ two words like a first and a last name Write what the hitter is, and not who\.$/,
    ),
  ]);
  expect([...asRole('Staff Fitter'), ...asRole('Teaching Professional'), ...asRole('customer')]).toEqual([]);
});

test('a file name of two capitalised words of no trade looks like a person', () => {
  const like = (name: string, contenders: readonly string[] = []): boolean =>
    likePerson(name, contenders) !== null;
  expect(
    ['John Smith.csv', 'John_Smith driver.csv', '2026-04-11 Ann-Kathrin Meier.csv'].map((n) => like(n)),
  ).toEqual([true, true, true]);
  expect(
    [
      'Driver Heads.csv',
      'Demo Day.csv',
      'alder birch.csv',
      'Alder9 Birch9.csv',
      'Three Balls One Iron.csv',
    ].map((n) => like(n)),
  ).toEqual([false, false, false, false, false]);
  expect(like('Heron Wren.csv', ['Heron', 'Wren'])).toBe(false);
});

test('names of people are told from names of roles', () => {
  const people = personNames(['John Smith', 'G1', 'Customer A', 'one'], []);
  expect(people).toEqual([{ whole: ['john', 'smith'], telling: ['john', 'smith'] }]);
  expect(namesPerson('smith-2026.csv', people)).toBe(true);
  expect(namesPerson('smithers.csv', people)).toBe(false);
});

test('a file named like a person whom nobody has told us of is an error of its own', () => {
  const like = (file: string): readonly string[] =>
    problemsOf({ file, player: 'one' })
      .filter(({ kind }) => kind === 'file-named-like-person')
      .map(({ severity, line, found: what, cure }) => `${severity} ${line} ${what}: ${cure}`);
  expect(like('Jane Miller 2026-04-11.csv')).toEqual([
    'error 11 two words like a first and a last name: Rename the file, for example to session.csv, here and beside report.md.',
  ]);
  expect(like('Two Heads.csv')).toEqual([]);
});
