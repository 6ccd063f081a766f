// Telephone numbers are of ranges set aside for fiction, so that they belong to nobody: Ofcom "Telephone numbers for
// use in TV and radio drama programmes" (01632 960xxx, 020 7946 0xxx, 07700 900xxx) and NANPA's 555-0100 to 555-0199.
// Addresses are of domains that RFC 2606 reserves. What must not trigger is common practice of session files, no source.
import { describe, expect, test } from 'vitest';
import { personalDataIn } from '../../../src/intake/privacy/personalData.ts';

const found = (text: string): readonly string[] =>
  personalDataIn(text).map(({ kind, text: part, at }) => {
    expect(text.slice(at, at + part.length)).toBe(part);
    return `${kind}: ${part}`;
  });

describe('is found', () => {
  test.each([
    ['write to jo.fitter+golf@example.com today', 'e-mail address: jo.fitter+golf@example.com'],
    ['JO@SHOP.EXAMPLE', 'e-mail address: JO@SHOP.EXAMPLE'],
    ['<müller@büro.example>', 'e-mail address: müller@büro.example'],
    ['Customer +44 1632 960123', 'phone number: +44 1632 960123'],
    ['+441632960123', 'phone number: +441632960123'],
    ['0044 1632 960123', 'phone number: 0044 1632 960123'],
    ['+1 (212) 555-0123', 'phone number: +1 (212) 555-0123'],
    ['ring 212-555-0123.', 'phone number: 212-555-0123'],
    ['(212) 555-0123', 'phone number: (212) 555-0123'],
    ['212.555.0123', 'phone number: 212.555.0123'],
    ['01632 960123 after six', 'phone number: 01632 960123'],
    ['020 7946 0958', 'phone number: 020 7946 0958'],
    ['07700 900 123', 'phone number: 07700 900 123'],
    ['Tel: 960123', 'phone number: 960123'],
    ['mobile 07700900123', 'phone number: 07700900123'],
    ['call me on 555 0123', 'phone number: 555 0123'],
    ['serial no. 4XK-20931', 'serial number: 4XK-20931'],
    ['Serial number: A1B2C3D4', 'serial number: A1B2C3D4'],
    ['S/N 90210455', 'serial number: 90210455'],
    ['the serial was 88431207B', 'serial number: 88431207B'],
  ])('%s', (text, expected) => {
    expect(found(text)).toEqual([expected]);
  });

  test('several in one text, each at its place', () => {
    expect(found('Ann, a@example.org, 212-555-0123, S/N KJ00417')).toEqual([
      'e-mail address: a@example.org',
      'phone number: 212-555-0123',
      'serial number: KJ00417',
    ]);
  });
});

describe('gives no alarm', () => {
  test.each([
    // Shot numbers, counts, ranges
    'shots 3, 7, 12 and 15 left out',
    'shot 1042',
    'shots 10-19 and 30-39',
    '12 shots each, 36 in all',
    'handicap 6-10',
    '1 2 3 4 5 6 7 8 9 10 11 12',
    // Spin, distances, speeds
    'spin 2345 rpm, then 2 890 rpm',
    'between 2,450 and 2,900 rpm',
    '231.4 yd carry, 245.9 yd total, 2610 rpm',
    '231.4 245.9 2610 12.5',
    '231 245 2610',
    '103.4-151.2-1.46',
    'launch +12.345678 and -0.5',
    '0.83/0.80/0.78',
    '45.25 in, 305 g, D2',
    // Prices
    '£1,299.00 against £449',
    'EUR 1 299,00',
    '1299.00 USD',
    '{amount: 499, currency: GBP, on: 2026-04-11}',
    // Days and times
    '2026-04-11',
    '2026-04-11T10:23:45.123Z',
    '2026-04-11 10:23:45+02:00',
    '20260411 102345',
    '20260411T102345',
    '11.04.2026 10:23',
    '04/11/2026 0930',
    '04-11-2026 10:23',
    '10:23:45 to 11:02:10',
    'open 0900 to 1730',
    'seed three-heads-2026-11-25',
    // Names of clubs, files, versions
    'Alder 9° 2026, 460 cc, 60 g stiff',
    'shots-2026-04-11.csv',
    'version 2.14.1100',
    'a 56.08.10 wedge',
    'ball 2 of 3 @ 150 mph',
    '@alder against @birch',
    // The words alone
    'the serial number was not recorded',
    'serial numbers are not published',
    'S/N ratio of the radar',
    'a serial winner in 2026',
    'phone switched off, 12 shots',
    'hit the mobile net at 4 m',
    'call it 5 of 12',
    'cell 14 of line 9',
    'telephone rang before shot 12',
  ])('%s', (text) => {
    expect(found(text)).toEqual([]);
  });
});

// A quadratic search of such a text would take minutes; the limit leaves a slow machine room.
test.each([
  'a',
  '1',
  '0 ',
  '01 ',
  '1 ',
  '1, ',
  '+1',
  '0-1 ',
  '(',
  'a.',
  'a@',
  'a@a.',
  '1:',
  'S/N ',
  'tel 1',
  '2026-',
  '$1 ',
])(
  'half a million characters of %j are read without delay',
  (part) => {
    const text = part.repeat(500_000 / part.length);
    const start = process.cpuUsage().user;
    personalDataIn(text);
    personalDataIn(`${text}x`);
    expect((process.cpuUsage().user - start) / 1e6).toBeLessThan(8);
  },
  60_000,
);
