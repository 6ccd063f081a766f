import { describe, expect, test } from 'vitest';
import { readContender } from '../../../src/intake/authored/readContender.ts';
import { readShop } from '../../../src/intake/authored/readShop.ts';
import { defineSource } from '../../../src/intake/authored/source.ts';
import { file, line, problemsWith, readWith, reportWith } from './example.ts';

const { shop } = readShop(
  'shop.yaml',
  [
    'name: Example Golf',
    'address: https://reports.example/tests',
    'contact: errors@reports.example',
    'interests: {sentence: We sell what we test., paid_by: the shop, commission_or_gifts: none}',
    'reuse: {terms: with the credit line, credit: Example Golf}',
    'defaults: {units: metres, locale: en-US, place: indoors, monitor: camera, matters: {carry: 4 m, ball speed: 1 m/s}}',
    'strict: yes',
    '',
  ].join('\n'),
);

const alder = readContender(
  'contenders/alder.yaml',
  'label: Alder 9°\nsupplied_by: our stock\nsold_here: new\n',
);

describe('shop.yaml', () => {
  test('is read whole', () => {
    expect(shop).toEqual({
      name: 'Example Golf',
      address: { site: 'https://reports.example', base: '/tests/' },
      contact: 'errors@reports.example',
      brand: {},
      interests: {
        sentence: 'We sell what we test.',
        paidBy: { kind: 'shop', words: 'the shop' },
        commissionOrGifts: { kind: 'none', words: 'none' },
      },
      reuse: { terms: 'with the credit line', credit: 'Example Golf' },
      exports: [],
      defaults: {
        units: 'metres',
        locale: 'en-US',
        conditions: { place: 'indoors', monitor: { kind: 'camera' } },
        matters: {
          carry: { value: 4, unit: 'm', typed: '4 m' },
          ball_speed: { value: 1, unit: 'm/s', typed: '1 m/s' },
        },
      },
      strict: true,
    });
  });

  test('needs a name and nothing else', () => {
    expect(readShop('shop.yaml', 'name: Example Golf\n')).toMatchObject({
      shop: {
        name: 'Example Golf',
        address: null,
        contact: null,
        interests: {},
        reuse: {},
        defaults: { units: 'yards', locale: 'en-GB', conditions: {}, matters: {} },
        strict: false,
      },
      problems: [],
    });
  });

  test('says all that is wrong', () => {
    const text =
      'adress: x\naddress: reports.example\ndefaults: {units: yd, locale: English please, altitude: 120}\n';
    const { shop: none, problems } = readShop('shop.yaml', text);
    expect(none).toBeNull();
    expect(problems.map(line)).toEqual([
      '1:1 name | key-missing | the name of the shop | - | Add a line "name:" with the answer.',
      '1:1 adress | unknown-key | "address" | adress | Did you mean "address"?',
      '2:10 address | value-invalid | the address of the published site, such as https://reports.example/tests/ | reports.example | Write it from https:// on, without anything after a ? or #.',
      '3:19 defaults.units | value-invalid | yards or metres | yd | Write yards or metres.',
      '3:31 defaults.locale | value-invalid | a language tag such as en-GB | English please | Write a language and a country, such as en-GB or en-US.',
      '3:57 defaults.altitude | value-invalid | the altitude with its unit, such as 120 m | 120 | Write the unit after the number.',
    ]);
  });

  const fromTheStart = 'Write it from https:// on, without anything after a ? or #.';
  const plain =
    'Write folders with letters, digits and hyphens only, without blanks, percent signs and slashes that are written as %2F.';
  test.each([
    ['ftp://reports.example', fromTheStart],
    ['javascript:alert(1)', fromTheStart],
    ['https://reports.example/?a=b', fromTheStart],
    ['https://reports.example/#top', fromTheStart],
    [
      'https://user:pw@reports.example',
      'Write it without a name and a password: every page would show them.',
    ],
    ['https://reports.example/a b/', plain],
    ['https://reports.example/a%20b/', plain],
    ['https://reports.example/a%2Fb/', plain],
    ['https://reports.example/a%5Cb/', plain],
    ['https://reports.example/a%3Fb/', plain],
    ['https://reports.example/100%25/', plain],
    ['https://reports.example/%E4/', plain],
    ['https://reports.example/<b>/', plain],
    [
      'https://reports.example/tests/index.html',
      'Write the folder that the site stands in, not one of its pages: https://reports.example/tests/',
    ],
    [
      'https://reports.example/Index.HTM',
      'Write the folder that the site stands in, not one of its pages: https://reports.example/',
    ],
  ])('refuses %s as an address', (address, cure) => {
    const { shop: none, problems } = readShop('shop.yaml', `name: x\naddress: '${address}'\n`);
    expect(none).toBeNull();
    expect(problems.map((problem) => [problem.kind, problem.cure])).toEqual([['value-invalid', cure]]);
  });

  test.each([
    ['https://reports.example', 'https://reports.example', '/'],
    ['https://reports.example/tests', 'https://reports.example', '/tests/'],
    ['https://reports.example//tests///a/', 'https://reports.example', '/tests/a/'],
    ['https://reports.example/a/../b/./', 'https://reports.example', '/b/'],
    ['HTTPS://REPORTS.Example:443/Tests/', 'https://reports.example', '/Tests/'],
    ['http://192.0.2.7:8080/', 'http://192.0.2.7:8080', '/'],
    ['https://größe.example/größe/', 'https://xn--gre-6ka8i.example', '/gr%C3%B6%C3%9Fe/'],
    ['https://reports.example/gr%c3%b6%C3%9Fe', 'https://reports.example', '/gr%C3%B6%C3%9Fe/'],
    ['https://reports.example/gro\u0308ße', 'https://reports.example', '/gr%C3%B6%C3%9Fe/'],
    ['https://reports.example/gro%CC%88ße', 'https://reports.example', '/gr%C3%B6%C3%9Fe/'],
    ['https://reports.example/v2.1/~tests/', 'https://reports.example', '/v2.1/~tests/'],
  ])('takes %s as an address', (address, site, base) => {
    expect(readShop('shop.yaml', `name: x\naddress: '${address}'\n`)).toMatchObject({
      shop: { address: { site, base } },
      problems: [],
    });
  });
});

describe('contenders/<id>.yaml', () => {
  test('takes its id from the name of the file', () => {
    expect(alder).toMatchObject({
      contender: {
        id: 'alder',
        label: 'Alder 9°',
        suppliedBy: { kind: 'own-stock', stock: null, words: 'our stock' },
        soldHere: 'new',
      },
      problems: [],
    });
  });

  test('says all that is wrong, the name of the file included', () => {
    const { contender, problems } = readContender(
      'contenders/Alder 9.yaml',
      'label: Alder\nsold_here: perhaps\n',
    );
    expect(contender).toBeNull();
    expect(problems.map(({ kind, line: row, columnName }) => `${row} ${kind} ${columnName}`)).toEqual([
      '1 key-missing supplied_by',
      '1 value-invalid null',
      '2 value-invalid sold_here',
    ]);
  });
});

describe('a report among others', () => {
  const birch = readContender(
    'contenders/birch.yaml',
    'label: Birch 9°\nsupplied_by: lent\nsold_here: no\n',
  ).contender;
  const shared = {
    shop,
    contenders: new Map([
      ['alder', alder.contender],
      ['birch', birch],
    ]),
  };

  test('takes its contenders from their build sheets, in its own order', () => {
    const { front, problems } = readWith({ contenders: '[birch, alder]' }, shared);
    expect(problems).toEqual([]);
    expect(front?.contenders.map(({ label }) => label)).toEqual(['Birch 9°', 'Alder 9°']);
  });

  test('names a build sheet that is not there, with the nearest that is', () => {
    expect(problemsWith({ contenders: '[alder, brich]' }, shared)).toEqual([
      '6:21 contenders[2] | contender-file-missing | a file contenders/brich.yaml | brich | Did you mean "birch"?',
    ]);
  });

  test('is silent about a build sheet whose own file says what is wrong', () => {
    const broken = {
      shop,
      contenders: new Map([
        ['alder', null],
        ['birch', birch],
      ]),
    };
    const { front, problems } = readWith({ contenders: '[alder, birch]' }, broken);
    expect(front).toBeNull();
    expect(problems).toEqual([]);
  });

  test('adds the defaults of the shop to its own answers', () => {
    const { front } = readWith(
      { matters: '{carry: 5 yd}', conditions: '{place: outdoors, surface: mat}' },
      shared,
    );
    expect(front?.conditions).toEqual({ place: 'outdoors', surface: 'mat', monitor: { kind: 'camera' } });
    expect(front?.matters.carry?.typed).toBe('5 yd');
    expect(front?.matters.ball_speed?.typed).toBe('1 m/s');
  });

  test('need not repeat what the shop says of its interests', () => {
    expect(problemsWith({ interests: '{seen_before: nobody}' }, shared)).toEqual([]);
    expect(
      readWith({ interests: '{seen_before: nobody, paid_by: a maker}' }, shared).front?.interests,
    ).toEqual({
      sentence: 'We sell what we test.',
      paidBy: { kind: 'others', words: 'a maker' },
      commissionOrGifts: { kind: 'none', words: 'none' },
      seenBefore: { kind: 'nobody-outside', words: 'nobody' },
    });
    expect(problemsWith({ interests: null }, shared)).toEqual([
      '1:1 interests | interests-missing | who paid, what was given, and who saw the report before it was published | - | Add a block "interests:" that answers seen_before; "none" and "nobody" are answers.',
    ]);
  });

  test('becomes a source with its files and its shop', () => {
    const files = [{ name: 'shots.csv', sha256: '00' }];
    const { source, problems } = defineSource({
      slug: 'three-heads',
      file,
      text: reportWith({}),
      files,
      ...shared,
    });
    expect(problems).toEqual([]);
    expect(source).toMatchObject({
      slug: 'three-heads',
      files,
      shop,
      front: { title: 'Three driver heads, one shaft' },
    });
    expect(source?.placeOf(['date'])).toMatchObject({ file, line: 3, column: 7 });
  });
});
