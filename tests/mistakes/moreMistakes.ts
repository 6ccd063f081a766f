import { twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import {
  added,
  answered,
  base,
  edited,
  jpeg,
  narrated,
  recorded,
  report,
  session,
  shopped,
  without,
} from './content.ts';
import { at, csv, fine, md, type Mistake } from './told.ts';

const labelled = (label: string) => edited((text) => text.replace('label: Alder,', `label: ${label},`));
const identified = (id: string) => edited((text) => text.replace('  alder:', `  ${id}:`));
const built = (build: string) =>
  edited((text) => text.replace('sold_here: new', `sold_here: new, build: ${build}`));
const inBlock = (block: string) => edited((text) => text.replace(/^hitters:.*$/m, () => block));

/** Slips of form, and what only looks like one. */
const form: readonly Mistake[] = [
  [
    'all answers of the hitters flush left',
    inBlock('hitters:\none:\n  role: staff fitter\n  hand: right\n  consent: yes'),
    md('13:1', 'Put two blanks before this line'),
  ],
  [
    'one answer of a hitter flush left',
    inBlock('hitters:\n  one:\n    role: staff fitter\nhand: right\n    consent: yes'),
    md('15:1', 'Put 4 blanks before this line.'),
  ],
  [
    'the answers of a hitter as far left as the id',
    inBlock('hitters:\n  one:\n  role: staff fitter\n  hand: right\n  consent: yes'),
    md('14:3', 'an answer of "one"'),
  ],
  [
    'a contender flush left',
    edited((text) => text.replace('  birch:', 'birch:')),
    md('8:1', 'Put two blanks before this line'),
  ],
  [
    'the interests flush left',
    answered(
      'interests',
      'interests:\npaid_by: the shop\ncommission_or_gifts: none\nseen_before: nobody outside the shop',
    ),
    md('14:1', 'Put two blanks before this line'),
  ],
  [
    'an answer on the next line',
    edited((text) => text.replace('date: 2026-05-02', 'date:\n2026-05-02')),
    md('4:1', 'a colon and a blank'),
  ],
  [
    'curly quotes round a title with a colon',
    answered('title', 'title: “Two heads: a test”'),
    md('2:8', 'Put the value in quotes: "Two heads: a test".'),
  ],
  [
    'quotes that an apostrophe ends',
    answered('title', "title: 'Dave's four drivers'"),
    md('2:14', `Put all of it in quotes: "Dave's four drivers".`),
  ],
  ['an apostrophe', answered('title', "title: The shop's heads"), fine],
  ['a picture sign in a title', answered('title', 'title: Two heads 🏌️'), fine],
  ['a % before a label', labelled('%Alder'), md('7:18', 'Put the value in quotes: "%Alder".')],
  ['a @ before a label', labelled('@Alder'), md('7:18', 'Put the value in quotes: "@Alder".')],
  ['a label of digits', { ...labelled('07'), [session]: twoHeadsCsv.replaceAll('Alder', '07') }, fine],
  ['a label that is yes', { ...labelled('yes'), [session]: twoHeadsCsv.replaceAll('Alder', 'yes') }, fine],
  ['the id yes', identified('yes'), fine],
  ['the id 07', identified('07'), fine],
  ['the id null', identified('null'), fine],
  ['a status with a capital', answered('status', 'status: Published'), fine],
  ['a unit written out', answered('matters', 'matters: {carry: 5 yards}'), fine],
  [
    'Windows line ends and a byte order mark',
    edited((text) => `\ufeff${text.replaceAll('\n', '\r\n')}`),
    fine,
  ],
];

/** Answers that say something else than was meant. */
const answers: readonly Mistake[] = [
  [
    'a day that has not come',
    edited((text) => text.replace('date: 2026', 'date: 2062').replace('invented_data: yes\n', '')),
    md('3:7', 'Look at year and month.'),
  ],
  [
    'published before it was hit',
    added('published: 2026-04-01'),
    md('15:12', 'Correct the day of publication'),
  ],
  [
    'a word for carry or total',
    answered('primary', 'primary: distance'),
    md('9:10', 'Did you mean "carry" or "total"?'),
  ],
  [
    'a price in pounds',
    edited((text) => text.replace('sold_here: new', 'sold_here: new, price: £499')),
    md('7:72', 'price: {amount: 499, currency: GBP, on: 2026-05-02}'),
  ],
  [
    'what matters without its metric',
    answered('matters', 'matters: 5'),
    md('10:10', 'matters: {carry: 5 yd}'),
  ],
  [
    'exclusions in words',
    added('exclusions: two mishits'),
    md('15:13', 'exclusions: [{contender: alder, shot: 6,'),
  ],
  [
    'hitters by a name',
    answered('hitters', 'hitters: Dave'),
    md('12:10', 'hitters: {one: {role: staff fitter,'),
  ],
  ['a build sheet with an item of our own', built('{stiff: yes}'), md('7:73', 'Move it under "also:"')],
  ['a build sheet in which a comma parts a value', built('{loft: 9, stiff}'), md('7:', 'quotes')],
  ['a temperature as it stands', added('conditions: {temperature: 21C}'), fine],
  [
    'a label in a claim',
    added('claims: [{say: Alder carried farther than Birch, metric: carry, more: Alder, than: birch}]'),
    md('15:71', 'Did you mean "alder"?'),
  ],
  [
    'an order sheet that is not there',
    added('order_sheet: order.csv'),
    md('15:14', 'Copy the order sheet into the folder'),
  ],
  [
    'replaced by a report that is not there',
    answered('status', 'status: superseded\nsuperseded_by: other'),
    md('16:16', 'Make the report that replaces it first'),
  ],
  [
    'replaced by itself',
    answered('status', 'status: superseded\nsuperseded_by: heads'),
    md('16:16', 'Make the report that replaces it first'),
  ],
  [
    'an address with %20',
    shopped('address: https://x.example/my%20tests/'),
    at('shop.yaml:2:10', 'letters, digits and hyphens only'),
  ],
];

/** Files that lie where they should not, or are named otherwise. */
const files: readonly Mistake[] = [
  [
    'the session in other letters',
    answered('session', 'session: Shots.csv'),
    md('11:10', 'Did you mean "shots.csv"?'),
  ],
  [
    'a blank in the name of the session',
    { ...answered('session', 'session: my shots.csv'), 'reports/heads/my shots.csv': twoHeadsCsv },
    fine,
  ],
  [
    'a folder named as the session',
    { ...without(session), [`${session}/other.txt`]: 'x' },
    md('11:10', 'take the folder away'),
  ],
  [
    'a photo as session',
    { ...answered('session', 'session: shots.jpg'), 'reports/heads/shots.jpg': jpeg },
    at('reports/heads/shots.jpg', 'Export or save the session as CSV'),
  ],
  [
    'lock files of a spreadsheet program',
    { ...base, 'reports/heads/~$shots.csv': 'x', 'reports/heads/.~lock.shots.csv#': 'x' },
    fine,
  ],
  ['a photo beside the report', { ...base, 'reports/heads/bay.jpg': jpeg }, fine],
  [
    'a folder with a blank',
    { ...base, 'reports/My Drivers/report.md': twoHeads(), 'reports/My Drivers/shots.csv': twoHeadsCsv },
    at('reports/My Drivers', 'Rename the folder, for example to my-drivers.'),
  ],
  ['no report in its folder', { ...without(report) }, md('', 'Write report.md')],
];

/** The session file. */
const cells: readonly Mistake[] = [
  ['lines above the headings', recorded((text) => `Session of a morning\n\n${text}`), fine],
  [
    'units in the cells',
    recorded((text) => text.replace('Carry (yd)', 'Carry').replace(/(\d\.\d)$/gm, '$1 yd')),
    fine,
  ],
  [
    'commas for decimal points between commas',
    recorded((text) => text.replace(/(\d)\.(\d)$/gm, '$1,$2')),
    csv('2:4', 'export the session with decimal points', 0),
  ],
  ['a row twice', recorded((text) => `${text}12,Birch,229.9\n`), csv('14', 'Nothing need be done')],
  [
    'a head of another name',
    recorded((text) => text.replace('2,Birch', '2,Cedar')),
    csv('3', `add "match: ['Cedar']" to that contender`),
  ],
];

const narrative: readonly Mistake[] = [
  ['the longest shot by reference', narrated('{{ max carry alder }} {{ median carry alder }}'), fine],
  [
    'a slip in a reference',
    narrated('{{ mean carry aldr }}'),
    md('20:1', 'Did you mean {{ mean carry alder }}?'),
  ],
  ['a reference to an answer', narrated('{{ date }}'), md('20:1', 'Write one that is there')],
  [
    'one brace too few at the end',
    narrated('It was {{mean carry alder}.'),
    md('20:8', 'Close the reference with }}'),
  ],
];

export const moreMistakes: readonly Mistake[] = [...form, ...answers, ...files, ...cells, ...narrative];
