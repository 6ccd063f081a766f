import { rmSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { contentFolder, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
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
  sharedInterests,
  shopped,
  utf16,
  windows1252,
  without,
  zip,
  type Files,
} from './content.ts';
import { moreMistakes } from './moreMistakes.ts';
import { at, csv, fine, md, type Mistake } from './told.ts';

/** What shops do wrong, as small as it can be, and what they are told: the place, and what to do. */
const mistakes: readonly Mistake[] = [
  ['nothing', base, fine],
  // shop.yaml
  [
    'a slip in a key of the shop',
    sharedInterests('contct: a@shop.example'),
    at('shop.yaml:3:1', 'Did you mean "contact"?'),
  ],
  [
    'a slip in a unit of the shop',
    sharedInterests('defaults: {units: yard}'),
    at('shop.yaml:3:19', 'Did you mean "yards"?'),
  ],
  [
    'the shop as shop.yml',
    { ...without('shop.yaml'), 'shop.yml': 'name: Example\n' },
    at('shop.yaml', 'Rename shop.yml to shop.yaml.'),
  ],
  ['no shop', without('shop.yaml'), at('shop.yaml', 'Write content/shop.yaml')],
  [
    'an address without https',
    shopped('address: x.example/tests/'),
    at('shop.yaml:2:10', 'Write it from https:// on'),
  ],
  [
    'an address with a blank',
    shopped('address: "https://x.example/my tests/"'),
    at('shop.yaml:2:10', 'Write folders with letters, digits and hyphens only'),
  ],
  [
    'an address of a page',
    shopped('address: https://x.example/tests/index.html'),
    at('shop.yaml:2:10', 'https://x.example/tests/'),
  ],
  // The form of the front matter
  ['a slip in a key', answered('primary', 'primry: carry'), md('9:1', 'Did you mean "primary"?', 1)],
  [
    'a blank too few',
    edited((text) => text.replace('  birch:', ' birch:')),
    md('8:1', 'Indent this line exactly like'),
  ],
  [
    'a tab',
    edited((text) => text.replace('  birch:', '\tbirch:')),
    md('8:1', 'Replace the tab by two blanks'),
  ],
  [
    'blanks pasted from a page',
    edited((text) => text.replace('  birch:', '\u00a0\u00a0birch:')),
    md('8:1', 'Delete them and type blanks'),
  ],
  [
    'blanks pasted everywhere',
    edited((text) => text.replace(/^ {2}/gm, '\u00a0\u00a0')),
    md('7:1', 'So begin 2 lines.'),
  ],
  ['no --- at the start', edited((text) => text.slice(4)), md('1:1', '---')],
  ['no --- at the end', edited((text) => text.replace(/\n---\n/, '\n')), md('', '---')],
  ['an empty line before ---', edited((text) => `\n${text}`), md('1:1', '---')],
  ['an empty report', { ...base, [report]: '' }, md('1:1', '---')],
  [
    'a comment without its sign',
    edited((text) => text.replace('date: 2026', 'who hit it\ndate: 2026')),
    md('3:1', 'Write a colon and a blank'),
  ],
  [
    'a key twice',
    edited((text) => text.replace('status:', 'status: draft\nstatus:')),
    md('', 'Keep one line with "status:"'),
  ],
  [
    'a contender twice',
    edited((text) => text.replace('  birch:', '  alder:')),
    md('8:3', 'Keep one line with "alder:"'),
  ],
  ['a colon in a title', answered('title', 'title: Two heads: a test'), md('2:', 'quotes')],
  [
    'a # in a label',
    edited((text) => text.replace('label: Alder,', 'label: Alder #2,')),
    md('7:', 'quotes', 1),
  ],
  ['half a value in quotes', answered('title', "title: 'Two heads' tried"), md('2:', 'quotes')],
  // Dates
  ...['01/04/2026', '01-04-2026', '2026-4-1', '2026-31-04', '1 April 2026'].map(
    (date) => [`the date ${date}`, answered('date', `date: ${date}`), md('3:7', 'year-month-day')] as const,
  ),
  // Answers
  ['a status of our own', answered('status', 'status: live'), md('', 'draft')],
  ['a slip in a status', answered('status', 'status: superseeded'), md('', 'Did you mean "superseded"?')],
  ['a word for two metrics', answered('primary', 'primary: distance'), md('9:10', 'carry')],
  ['three main measures', answered('primary', 'primary: [carry, total, side]'), md('9:', 'one')],
  ['one contender', edited((text) => text.replace(/^ {2}birch:.*\n/m, '')), md('6:1', 'Add the contender')],
  ['a unit left out', answered('matters', 'matters: {carry: 5}'), md('10:', 'unit')],
  [
    'sold here: maybe',
    edited((text) => text.replace('sold_here: used', 'sold_here: perhaps')),
    md('8:', 'new'),
  ],
  ['a hand in one letter', edited((text) => text.replace('hand: right', 'hand: R')), md('12:', 'right')],
  ['consent: no', edited((text) => text.replace('consent: yes', 'consent: no')), md('12:', 'Ask the hitter')],
  ['hitters by name', answered('hitters', 'hitters: Dave'), md('12:10', 'Write each as a key')],
  [
    'a price as it stands on the tag',
    edited((text) => text.replace('sold_here: new', 'sold_here: new, price: £499')),
    md('7:72', 'under its key'),
  ],
  [
    'yes for a commission',
    edited((text) => text.replace('gifts: none', 'gifts: yes')),
    md('13:', 'Write what it was'),
  ],
  [
    'an id with a capital',
    edited((text) => text.replace('  alder:', '  Alder:')),
    md('7:3', 'small letters'),
  ],
  [
    'the id __proto__',
    edited((text) => text.replace('  alder:', '  __proto__:')),
    md('7:3', 'small letters'),
  ],
  // Exclusions
  ['exclusions: 6', added('exclusions: 6'), md('', 'dash')],
  [
    'two shots in one',
    added('exclusions: [{contender: birch, shot: [1, 2], rule: r, reason: x}]'),
    md('', 'whole number'),
  ],
  [
    'a shot of the other head',
    added('exclusions: [{contender: birch, shot: 1, rule: r, reason: x}]'),
    md('', 'number that stands in the shot column'),
  ],
  // Files
  [
    'the session misspelt',
    answered('session', 'session: shot.csv'),
    md('11:10', 'Did you mean "shots.csv"?'),
  ],
  [
    'the report as Report.md',
    { ...without(report), 'reports/heads/Report.md': twoHeads() },
    md('', 'Rename Report.md to report.md'),
  ],
  [
    'the report as report.md.txt',
    { ...without(report), 'reports/heads/report.md.txt': twoHeads() },
    md('', 'Rename report.md.txt to report.md'),
  ],
  [
    'a report beside the folders',
    { ...base, 'reports/loose.md': 'x' },
    at('reports/loose.md', 'Move it into the folder of its report'),
  ],
  [
    'a folder with a bracket',
    { ...base, 'reports/a (1)/report.md': twoHeads(), 'reports/a (1)/shots.csv': twoHeadsCsv },
    at('reports/a (1)', 'Rename the folder'),
  ],
  ['a spreadsheet named .csv', { ...base, [session]: zip }, csv('', 'Export or save the session as CSV')],
  [
    'a spreadsheet as session',
    { ...answered('session', 'session: shots.xlsx'), 'reports/heads/shots.xlsx': zip },
    at('reports/heads/shots.xlsx', 'Export or save the session as CSV'),
  ],
  [
    'a spreadsheet in the inbox',
    { ...base, 'inbox/session.xlsx': zip },
    at('inbox/session.xlsx', 'save it as CSV (UTF-8)'),
  ],
  [
    'a photo in the inbox',
    { ...base, 'inbox/screen.jpg': jpeg },
    at('inbox/screen.jpg', 'Export the session from the monitor as CSV'),
  ],
  ['an empty session', { ...base, [session]: '' }, csv('', 'Export the session again')],
  [
    'one session in two reports',
    { ...base, 'reports/again/report.md': twoHeads(), 'reports/again/shots.csv': twoHeadsCsv },
    md('11:10', 'Take one of the two reports out'),
  ],
  ['a report in UTF-16', { ...base, [report]: utf16(twoHeads()) }, md('', 'Save it as UTF-8')],
  [
    'a report in Windows-1252',
    { ...base, [report]: windows1252(twoHeads().replace('Two heads', 'Deux têtes')) },
    md('', 'read as Windows-1252'),
  ],
  ['a long dash for ---', edited((text) => text.replace('---\n', '—\n')), md('1:1', '---')],
  // Cells
  [
    'a misread cell',
    recorded((text) => text.replace('224.4', '2244')),
    csv('5:3', 'name it under "exclusions"'),
  ],
  [
    'the same, left out',
    {
      ...recorded((text) => text.replace('224.4', '2244')),
      [report]: twoHeads((text) =>
        text.replace(
          /^status/m,
          'exclusions: [{contender: birch, shot: 4, rule: misread, reason: The monitor misread it.}]\nstatus',
        ),
      ),
    },
    csv('5:3', 'Nothing need be done'),
  ],
  [
    'a letter in a number',
    recorded((text) => text.replace('224.4', '22O.4')),
    csv('5:3', 'name it under "exclusions"'),
  ],
  ['a head that the report lacks', recorded((text) => text.replace('2,Birch', '2,Cedar')), csv('', 'match')],
  ['a slip in a heading', recorded((text) => text.replace('Carry (yd)', 'Cary (yd)')), csv('', '', 9)],
  ['no unit', recorded((text) => text.replace('Carry (yd)', 'Carry')), csv('1:3', 'unit')],
  [
    'two columns of carry',
    recorded((text) => text.replace('Carry (yd)', 'Carry (yd),Carry (yd)').replace(/^(\d.*)$/gm, '$1,240.5')),
    csv('1:4', 'columns'),
  ],
  [
    'a broken quote',
    recorded((text) => text.replace('4,Birch', '4,"Birch')),
    csv('5:2', 'Close that quote', 9),
  ],
  // Narrative
  [
    'a reference in single braces',
    narrated('It was { mean carry alder }.'),
    md('20:8', 'Write {{ mean carry alder }}'),
  ],
  [
    'a reference that does not close',
    narrated('It was {{mean carry alder}.'),
    md('20:8', 'Close the reference with }}'),
  ],
  [
    'a metric that was not measured',
    narrated('{{ mean ball speed alder }}'),
    md('20:1', 'Write one that is there'),
  ],
  [
    'another word for a value',
    narrated('{{ gap carry alder birch }}'),
    md('20:1', '{{ apart carry alder birch }}'),
  ],
  ['a value that there is not', narrated('{{ table }}'), md('20:1', 'Write one that is there')],
  ['a curly quote in a reference', narrated('{{ mean carry “alder” }}'), md('20:1', '{{')],
  ['HTML', narrated('It was <b>far</b>.'), md('20:8', 'Write **bold**')],
  [
    'a picture that is not there',
    narrated('![bay](bay.jpg)'),
    md('20:8', 'Copy the picture into the folder'),
  ],
  ['a book', narrated('word '.repeat(50_000)), md('17:1', 'Tell it in fewer words')],
  ['a typed average', narrated('Alder averaged 250 yards.'), md('20:16', 'Write {{ mean carry alder }}')],
  [
    'an unclaimed comparison',
    narrated('Alder is longer than Birch.'),
    md('20:10', '{{ answer carry alder birch }}'),
  ],
  ['advice', narrated('Buy Alder.'), md('20:1', '{{ answer carry alder birch }}')],
  // Names
  [
    'a golfer in the narrative',
    edited((text) => `${text.replace('consent: yes', 'consent: yes, match: Dora Quill')}\nDora hit them.\n`),
    md('20', 'Write the role'),
  ],
  [
    'a golfer in a file name',
    { ...answered('session', 'session: Dora Quill.csv'), 'reports/heads/Dora Quill.csv': twoHeadsCsv },
    md('11:10', 'Rename the file'),
  ],
  [
    'the same, with the name known',
    {
      ...edited((text) =>
        text
          .replace('consent: yes', 'consent: yes, match: Dora Quill')
          .replace('shots.csv', 'Dora Quill.csv'),
      ),
      'reports/heads/Dora Quill.csv': twoHeadsCsv,
    },
    md('11:10', 'Rename the file'),
  ],
  [
    'a golfer in a claim',
    edited((text) =>
      text
        .replace('consent: yes', 'consent: yes, match: Dora Quill')
        .replace(
          'status:',
          'claims: [{say: Dora hit Alder farther, metric: carry, more: alder, than: birch, allow_unproven: yes}]\nstatus:',
        ),
    ),
    md('15:16', 'Write the role'),
  ],
];

const day = '2026-05-03';

const problemsOf = (files: Files) => {
  const folder = contentFolder(files);
  try {
    return checkedSite(folder, [], day).problems.map(({ file, line, column, cure, cureAtDesk = cure }) => ({
      place: [file, ...(line === null ? [] : [line, ...(column === null ? [] : [column])])].join(':'),
      cure,
      cureAtDesk,
    }));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

describe('a mistake', () => {
  test.each([...mistakes, ...moreMistakes])('%s', (_mistake, files, told) => {
    const problems = problemsOf(files);
    if (told === null) {
      expect(problems).toEqual([]);
      return;
    }
    const own = problems.filter(
      ({ place, cure }) => place.startsWith(told.at.replace(/:$/, '')) && cure.includes(told.cure),
    );
    expect(own.length, JSON.stringify(problems, null, 1)).toBeGreaterThan(0);
    expect(problems.length, JSON.stringify(problems, null, 1)).toBeLessThanOrEqual(1 + (told.besides ?? 0));
    // Whoever works by forms has no command to type.
    expect(problems.filter(({ cureAtDesk }) => cureAtDesk.includes('npm run'))).toEqual([]);
  });
});
