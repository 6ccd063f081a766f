import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { privacyProblems } from '../../../src/intake/privacy/privacyProblems.ts';

const file = 'reports/test/shots.csv';
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const inCsv = (text: string) => privacyProblems('reports/test/report.md', '', [{ file, bytes: bytes(text) }]);
const places = (text: string): readonly string[] =>
  inCsv(text).map(
    ({ kind, severity, line, column, columnName, found }) =>
      `${kind} ${severity} ${line}:${column} ${columnName}: ${found}`,
  );

describe('CSV', () => {
  test('notes and names, by line and cell, shown by their first characters', () => {
    const csv = [
      'Shot,Club,Player,Carry (yd),Note',
      '1,Alder,one,231.2,',
      '2,Birch,jo@example.com,226.1,"thin, rang 212-555-0123"',
      '3,Alder,one,235.9,serial no 4XK20931',
    ].join('\n');
    expect(places(csv)).toEqual([
      'personal-data warning 3:3 Player: an e-mail address: jo…',
      'personal-data warning 3:5 Note: a phone number: 21…',
      'personal-data warning 4:5 Note: a serial number: 4X…',
    ]);
    expect(JSON.stringify(inCsv(csv))).not.toMatch(/example\.com|0123|20931/);
  });

  test('a column of one kind is one warning, at its first', () => {
    const csv = ['Club;Carry (m);Email', 'Alder;210,4;a@example.com', 'Birch;209,1;b@example.com'].join(
      '\r\n',
    );
    expect(places(csv)).toEqual(['personal-data warning 2:3 Email: an e-mail address: a@…']);
  });

  test('bare digits count only under a heading that says what they are', () => {
    const rows = ['Alder,231.2,4410231', 'Birch,226.1,4410232'];
    const csv = (heading: string): string => [`Club,Carry (yd),${heading}`, ...rows].join('\n');
    expect(places(csv('Serial number'))).toEqual([
      'personal-data warning 2:3 Serial number: a serial number: 44…',
    ]);
    expect(places(csv('Phone'))).toEqual(['personal-data warning 2:3 Phone: a phone number: 44…']);
    expect(places(csv('Shot'))).toEqual([]);
    expect(places(csv('Spin rate (rpm)'))).toEqual([]);
  });

  test('a file that is not text is left to those who read shots', () => {
    const zip = new Uint8Array([0x50, 0x4b, 3, 4, 0, 0, 0, 0]);
    expect(privacyProblems('r', '', [{ file, bytes: zip }])).toEqual([]);
  });

  const fixtures = join('tests', 'fixtures', 'csv');
  test.each(readdirSync(fixtures).filter((name) => name.endsWith('.csv')))('%s gives no alarm', (name) => {
    expect(privacyProblems('r', '', [{ file: name, bytes: readFileSync(join(fixtures, name)) }])).toEqual([]);
  });
});

describe('report.md', () => {
  test('front matter and narrative, by line and character', () => {
    const text = [
      '---',
      'title: Two heads',
      'question: Ask a@example.com?',
      '---',
      'Ring +44 1632 960123.',
    ].join('\n');
    const problems = privacyProblems('reports/test/report.md', text, []);
    expect(problems.map(({ line, column, found }) => ({ line, column, found }))).toEqual([
      { line: 3, column: 15, found: 'an e-mail address: a@…' },
      { line: 5, column: 6, found: 'a phone number: +4…' },
    ]);
    expect(
      problems.every(({ severity, file: where }) => severity === 'warning' && where.endsWith('report.md')),
    ).toBe(true);
  });

  test.each(readdirSync(join('content', 'reports')))('the example %s gives no alarm', (slug) => {
    const folder = join('content', 'reports', slug);
    const files = readdirSync(folder).filter((name) => name.endsWith('.csv'));
    const problems = privacyProblems(
      `reports/${slug}/report.md`,
      readFileSync(join(folder, 'report.md'), 'utf8'),
      files.map((name) => ({ file: name, bytes: readFileSync(join(folder, name)) })),
    );
    expect(problems).toEqual([]);
  });
});
