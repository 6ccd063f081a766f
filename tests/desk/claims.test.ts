import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { checkContent } from '../../src/commands/checkContent.ts';
import { claimsOf } from '../../src/prose/claims.ts';
import { tellClaim } from '../../src/prose/english/claims.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { contentFolder, shop } from '../commands/contentFolder.ts';
import { listen } from '../commands/listen.ts';
import { around, csvOf, reportText, threeHeads } from '../findings/reportOf.ts';
import { atDesk, seenIn, type AtDesk } from './atDesk.ts';

const place = '/desk/reports/heads/claims/';

interface Case {
  readonly root: string;
  readonly desk: AtDesk;
  readonly page: () => Promise<string>;
  readonly file: () => string;
  /** Presses a button with these fields; the page that it leads to. */
  readonly press: (ask: string, fields?: Readonly<Record<string, string>>) => Promise<Pressed>;
}

interface Pressed {
  readonly status: number;
  readonly text: string;
}

const longest = {
  say: 'Alder flies past Cedar',
  metric: 'carry',
  of: 'alder',
  direction: 'more',
  than: 'cedar',
};

function open({
  claims = null,
  front = {},
  shots = threeHeads ?? {},
  order = 'in turn' as 'in turn' | 'one after another',
  shopFile = shop,
}: {
  claims?: string | null;
  front?: Readonly<Record<string, string | null>>;
  shots?: Readonly<Record<string, Readonly<Record<string, readonly number[]>>>>;
  order?: 'in turn' | 'one after another';
  shopFile?: string;
} = {}): Case {
  const root = contentFolder({
    'shop.yaml': shopFile,
    'reports/heads/report.md': reportText({ front: { ...front, claims }, narrative: 'Hit in one morning.' }),
    'reports/heads/shots.csv': csvOf(shots, order),
  });
  const desk = atDesk(root);
  const page = async (): Promise<string> => (await desk.get(place)).text();
  return {
    root,
    desk,
    page,
    file: () => readFileSync(join(root, 'reports/heads/report.md'), 'utf8'),
    press: async (ask, fields = {}) => {
      const answer = await desk.post(place, { seen: seenIn(await page()), do: ask, ...fields });
      const to = answer.headers.get('location');
      return { status: answer.status, text: await (to === null ? answer : await desk.get(to)).text() };
    },
  };
}

/** The fields of a claim as its form names them. */
const claim = (fields: Readonly<Record<string, string>>): Record<string, string> =>
  Object.fromEntries(Object.entries(fields).map(([name, text]) => [`answer.${name}`, text]));

const list = (...entries: readonly string[]): string =>
  `\n${entries.map((entry) => `  - {${entry}}`).join('\n')}`;

const lines = (page: string, selector: string): readonly string[] =>
  [...parseHTML(page).document.querySelectorAll(selector)].map(({ textContent }) =>
    textContent.replace(/\s+/g, ' ').trim(),
  );
const told = (page: string): string => lines(page, 'main .notice').join(' ');

/** What changed in a file, line by line. */
const changes = (before: string, after: string): { readonly out: string[]; readonly in: string[] } => ({
  out: before.split('\n').filter((line) => !after.split('\n').includes(line)),
  in: after.split('\n').filter((line) => !before.split('\n').includes(line)),
});

const supported = 'say: Alder flies past Cedar, metric: carry, more: alder, than: cedar';
const overstated = `${supported}, by_at_least: 10 yd`;
const contradicted = 'say: Cedar flies past Alder, metric: carry, more: cedar, than: alder';
const even = {
  ...threeHeads,
  'Carry (yd)': { alder: around(231), birch: around(229), cedar: around(225) },
};
const unshown = 'say: Alder flies past Birch, metric: carry, more: alder, than: birch';

describe('the claims of a report', () => {
  test.each([
    [
      'supported',
      [supported, 'say: Birch is steadier, metric: carry, tighter: birch, than: cedar, allow_unproven: yes'],
    ],
    ['overstated', [overstated]],
    ['on another measure', ['say: Alder launches higher, metric: launch_angle, more: alder, than: cedar']],
  ])('stand as the page of the report prints them: %s', async (_name, entries) => {
    const shots = {
      ...threeHeads,
      'Launch Angle (deg)': { alder: around(13, 0.1), birch: around(11, 0.1), cedar: around(9, 0.1) },
    };
    const { root, page } = open({ claims: list(...entries), shots });
    const { findings, telling } =
      loadSite(root).reports.find(({ findings: { slug } }) => slug === 'heads') ?? {};
    if (findings === undefined || telling === undefined) throw new Error('The report is not there.');
    const shown = lines(await page(), 'ol.claims li');
    const printed = claimsOf(findings).map((one) => tellClaim(one, telling));
    expect(printed).toHaveLength(entries.length);
    for (const [index, { said, restated, standing, supports }] of printed.entries())
      for (const words of [said, restated, standing, supports]) expect(shown[index]).toContain(words);
  });

  test('a contradicted one is told with the sentence that the shots support, and takes it', async () => {
    const { page, press, file } = open({
      claims: `\n  # Said at the counter.\n  - {${contradicted}}  # once\n  - {${supported}}`,
    });
    const before = file();
    const [first] = lines(await page(), 'ol.claims li');
    expect(first).toContain('Contradicted.');
    expect(first).toContain(
      'The shots support this sentence: Alder carried at least 7 yards farther than Cedar.',
    );
    expect(told((await press('take', { claim: '0' })).text)).toContain('Taken:');
    expect(changes(before, file())).toEqual({
      out: [`  - {${contradicted}}  # once`],
      in: [
        '  - {say: Alder carried at least 7 yards farther than Cedar, metric: carry, more: alder, than: cedar, by_at_least: 7 yd}  # once',
      ],
    });
    const [now] = lines(await page(), 'ol.claims li');
    expect(now).toContain('Supported.');
    expect(now).not.toContain('The shots support this sentence');
  });

  test('an overstated one takes the size that the shots reach', async () => {
    const { press, file } = open({
      claims:
        '\n  - say: Alder flies past Cedar\n    metric: carry\n    more: alder\n    than: cedar\n    by_at_least: 10 yd # too much',
    });
    const before = file();
    await press('take', { claim: '0' });
    expect(changes(before, file())).toEqual({
      out: ['  - say: Alder flies past Cedar', '    by_at_least: 10 yd # too much'],
      in: ['  - say: Alder carried at least 7 yards farther than Cedar', '    by_at_least: 7 yd # too much'],
    });
  });

  test('one that is not shown may say so, or go', async () => {
    const { page, press, file } = open({ claims: list(unshown), shots: even });
    const before = file();
    const [only] = lines(await page(), 'ol.claims li');
    expect(only).toContain('Not shown. We cannot tell whether Alder or Birch carried farther');
    expect(lines(await page(), 'ol.claims button')).toEqual([
      'Print it as not shown by the shots',
      'Take it out',
    ]);
    await press('unproven', { claim: '0' });
    expect(changes(before, file()).in).toEqual([`  - {${unshown}, allow_unproven: yes}`]);
    expect(lines(await page(), 'ol.claims button')).toEqual(['Take it out']);
    expect((await press('unproven', { claim: '0' })).text).toContain('Nothing was written');
  });

  test('one is taken out, and all other lines stay', async () => {
    const { press, file, page, root } = open({
      claims: `\n  # The first.\n  - {${supported}}\n  # The second.\n  - {${contradicted}}\n  # No third.`,
    });
    const before = file();
    await press('out', { claim: '1' });
    expect(changes(before, file())).toEqual({ out: [`  - {${contradicted}}`], in: [] });
    await press('out', { claim: '0' });
    expect(changes(before, file()).out).toEqual([`  - {${supported}}`, `  - {${contradicted}}`]);
    expect(lines(await page(), '#standing')).toEqual(['You claim nothing yet']);
    const { terminal } = listen();
    expect(checkContent({ contentDir: root, only: [], json: false, terminal })).toBe(0);
    expect((await press('out', { claim: '0' })).text).toContain('There is no such claim.');
  });

  test('what is wrong with one stands at it, and the answers lead to its page', async () => {
    const { page, desk } = open({
      claims: list(
        supported,
        'say: Alder is the best there is, metric: carry, more: alder, than: cedar, by_at_least: 5',
      ),
    });
    const text = await page();
    expect(lines(text, '#claim-2 .error').join(' ')).toContain(
      'Write the unit after the number: m, yd or ft',
    );
    expect(lines(text, '#claim-1 .error')).toEqual([]);
    expect(lines(text, '#claim-1')[0]).toContain('Supported.');
    expect(
      [...parseHTML(text).document.querySelectorAll('.problems a')].map((link) => link.getAttribute('href')),
    ).toEqual(['#claim-2']);
    const answers = parseHTML(await (await desk.get('/desk/reports/heads/')).text()).document;
    const links = [...answers.querySelectorAll('.problems a')];
    expect(links.map((link) => [link.getAttribute('href'), link.textContent])).toEqual([[place, 'Claims']]);
  });

  test('while questions are open they stand as they were typed', async () => {
    const { page, press, file } = open({ claims: list(supported), front: { question: '' } });
    expect(lines(await page(), 'ol.claims li')[0]).toContain('Alder flies past Cedar');
    expect(lines(await page(), '#supported')).toEqual([]);
    expect((await press('add', claim(longest))).text).toContain('questions are still open');
    expect((await press('out', { claim: '0' })).status).toBe(303);
    expect(file()).not.toContain('Alder flies past Cedar');
  });
});

describe('what the shots support', () => {
  test('is offered sentence by sentence, and added as it stands', async () => {
    const { page, press, file, root } = open();
    const before = file();
    const { document } = parseHTML(await page());
    const form = document.querySelector('#supported ~ ul form, section[aria-labelledby="supported"] form');
    const sent = Object.fromEntries(
      [...(form?.querySelectorAll('input') ?? [])].map((input) => [
        input.getAttribute('name') ?? '',
        input.getAttribute('value') ?? '',
      ]),
    );
    const { text } = await press('add', sent);
    expect(told(text)).toContain('Added.');
    expect(changes(before, file())).toEqual({
      out: [],
      in: [
        'claims:',
        '  - {say: Alder carried at least 7 yards farther than Cedar, metric: carry, more: alder, than: cedar, by_at_least: 7 yd}',
      ],
    });
    expect(file()).toContain('shop}\nclaims:\n');
    const again = lines(text, 'section[aria-labelledby="supported"] li');
    expect(again[0]).toContain('Your report says so already.');
    expect(again[1]).toContain('Alder carried at least 1 yard farther than Birch.');
    const { terminal, said } = listen();
    expect(checkContent({ contentDir: root, only: [], json: false, terminal })).toBe(0);
    expect(said()).not.toContain('claim');
  });

  test('in metres where the shop prints metres', async () => {
    const { page, press, file } = open({ shopFile: 'name: Example Shop\ndefaults: {units: metres}\n' });
    expect(lines(await page(), 'section[aria-labelledby="supported"] .claim')).toContain(
      'Alder carried at least 6 metres farther than Cedar.',
    );
    expect(await page()).toContain('such as 5 m');
    await press('add', claim({ ...longest, size: '6 m' }));
    expect(file()).toContain('by_at_least: 6 m}');
  });

  test('is one sentence where they support nothing', async () => {
    const { page } = open({ order: 'one after another' });
    expect(lines(await page(), 'section[aria-labelledby="supported"] li')).toEqual([]);
    expect(lines(await page(), 'section[aria-labelledby="supported"] .note')).toEqual([
      'The shots support no claim about carry. Alder went farther than Birch and Cedar, and Birch farther than Cedar, but they were hit one after another, so we cannot say that it was the head.',
    ]);
  });

  test('holds what else was measured, folded, with how many were looked at', async () => {
    const shots = {
      ...threeHeads,
      'Launch Angle (deg)': { alder: around(13, 0.1), birch: around(11, 0.1), cedar: around(9, 0.1) },
      'Spin Rate (rpm)': { alder: around(2500, 40), birch: around(2500, 40), cedar: around(2500, 40) },
    };
    const text = await open({ shots }).page();
    const fold = 'section[aria-labelledby="supported"] details';
    expect(lines(text, `${fold} h3`)).toEqual(['Launch angle']);
    expect(lines(text, `${fold} .claim`)[0]).toMatch(/^Alder launched at least \d/);
    expect(lines(text, `${fold} .note`)[0]).toContain('Seen, but not what this test set out to check');
    expect(lines(text, 'section[aria-labelledby="supported"] > .note')).toEqual([
      'The shots support no claim about spin rate.',
    ]);
  });
});

describe('a claim of your own', () => {
  test('is shown as it would read, and nothing is written', async () => {
    const { press, file } = open();
    const before = file();
    const { status, text } = await press('see', claim(longest));
    expect(status).toBe(200);
    expect(lines(text, '.reading .claim')).toEqual(['Alder flies past Cedar.']);
    expect(lines(text, '.reading')[0]).toContain(
      'Supported. The shots support this: Alder carried 7 to 17 yards farther than Cedar.',
    );
    expect(file()).toBe(before);
    const { document } = parseHTML(text);
    expect(document.querySelector('[name="answer.say"][type="text"]')?.getAttribute('value')).toBe(
      'Alder flies past Cedar',
    );
    const chosen = [...document.querySelectorAll('.own-claim input[checked]')].map((input) =>
      input.getAttribute('value'),
    );
    expect(chosen).toEqual(['carry', 'alder', 'more', 'cedar']);
  });

  test('is added where it stands', async () => {
    const { press, file } = open({ claims: list(overstated) });
    const before = file();
    await press('add', claim({ ...longest, size: '5 yd' }));
    expect(changes(before, file())).toEqual({
      out: [],
      in: ['  - {say: Alder flies past Cedar, metric: carry, more: alder, than: cedar, by_at_least: 5 yd}'],
    });
  });

  test.each([
    [
      'contradicted',
      { ...longest, of: 'cedar', than: 'alder', say: 'Cedar flies past Alder' },
      'speak against it',
    ],
    ['overstated', { ...longest, size: '10 yd' }, 'more than the shots support'],
  ])('one that is %s is refused, with the sentence that stands to be taken', async (_name, typed, why) => {
    const { press, file } = open();
    const before = file();
    const { status, text } = await press('add', claim(typed));
    expect(status).toBe(200);
    expect(told(text)).toContain('Nothing was added');
    expect(told(text)).toContain(why);
    expect(file()).toBe(before);
    const { document } = parseHTML(text);
    const taking = [...document.querySelectorAll('.reading form')].find((form) =>
      form.textContent.includes('Take this sentence'),
    );
    const sent = Object.fromEntries(
      [...(taking?.querySelectorAll('input') ?? [])].map((input) => [
        input.getAttribute('name') ?? '',
        input.getAttribute('value') ?? '',
      ]),
    );
    await press('add', sent);
    expect(changes(before, file()).in).toContain(
      '  - {say: Alder carried at least 7 yards farther than Cedar, metric: carry, more: alder, than: cedar, by_at_least: 7 yd}',
    );
    await press('out', { claim: '0' });
    expect(changes(before, file())).toEqual({ out: [], in: ['claims:'] });
  });

  test('one that is not shown is refused, or added with that word', async () => {
    const { press, file } = open({ shots: even });
    const typed = claim({ ...longest, than: 'birch', say: 'Alder flies past Birch' });
    const { text } = await press('add', typed);
    expect(told(text)).toContain('the shots do not show it');
    expect(file()).not.toContain('claims:');
    expect(lines(text, '.reading button')).toEqual(['Add it, printed as not shown by the shots']);
    await press('add-unproven', typed);
    expect(file()).toContain(`  - {${unshown}, allow_unproven: yes}\n`);
  });

  test('a word that it is not shown goes with nothing else', async () => {
    const { press, file } = open();
    const wrong = { ...longest, of: 'cedar', than: 'alder', say: 'Cedar flies past Alder' };
    await press('add-unproven', claim(wrong));
    expect(file()).not.toContain('claims:');
  });

  test('what is missing or cannot be read is told at its question, and above', async () => {
    const { press, file } = open();
    const before = file();
    const { text } = await press('add', claim({ ...longest, direction: '', than: 'alder', say: '' }));
    expect(told(text)).toContain('something of it is still missing');
    const { document } = parseHTML(text);
    const leads = [...document.querySelectorAll('ul.problems a')].map((link) => link.getAttribute('href'));
    expect(leads).toEqual(['#answer-say', '#answer-direction', '#answer-than']);
    expect(document.querySelector('#answer-say')?.getAttribute('aria-invalid')).toBe('true');
    const { text: noUnit } = await press('add', claim({ ...longest, size: '5' }));
    expect(lines(noUnit, '#answer-size-note-0')[0]).toContain('Write the unit after the number: m, yd or ft');
    const { text: other } = await press(
      'add',
      claim({ ...longest, say: 'Cedar carried farther than Alder' }),
    );
    expect(told(other)).toContain('it cannot stand as it is');
    expect(lines(other, '#answer-say-note-0')[0]).toContain('farther');
    expect(file()).toBe(before);
  });

  test('markup in every field is text', async () => {
    const markup = `"><img src=x onerror=alert(1)>'&lt;`;
    const { press, page, file } = open();
    const names = ['say', 'metric', 'of', 'direction', 'than', 'size'];
    const everywhere = Object.fromEntries(names.map((name) => [name, markup]));
    const said = { ...longest, say: `Alder ${markup} Cedar` };
    for (const { text } of [
      await press('see', claim(everywhere)),
      await press('add', claim(everywhere)),
      await press('see', claim(said)),
      await press('add', claim(said)),
      await press('take', { claim: markup }),
      await press(markup, { claim: markup }),
    ]) {
      expect(parseHTML(text).document.querySelectorAll('img')).toHaveLength(0);
      expect(text).not.toContain('<img');
    }
    expect(file()).toContain('onerror');
    expect(lines(await page(), '#claim-1-said')).toEqual([`Alder ${markup} Cedar.`]);
  });
});

describe('the file underneath', () => {
  test('is never written over where it was changed meanwhile', async () => {
    const { desk, page, file, root } = open();
    const seen = seenIn(await page());
    const elsewhere = file().replace('Three driver heads', 'Three heads');
    writeFileSync(join(root, 'reports/heads/report.md'), elsewhere);
    for (const ask of ['add', 'see', 'out']) {
      const text = await (await desk.post(place, { seen, do: ask, ...claim(longest) })).text();
      expect(told(text)).toContain('The file was changed meanwhile');
      expect(
        parseHTML(text).document.querySelector('[name="answer.say"][type="text"]')?.getAttribute('value'),
      ).toBe(longest.say);
    }
    expect(file()).toBe(elsewhere);
  });
});

test('what was expected beforehand stands first', async () => {
  const plan = '{date: 2026-04-01, expectation: Alder should carry farthest <b>of all</b>}';
  const text = await open({ front: { plan } }).page();
  expect(lines(text, 'main h2')[0]).toBe('What you expected beforehand');
  expect(lines(text, 'section[aria-labelledby="expected"] .claim')).toEqual([
    'Alder should carry farthest <b>of all</b>.',
  ]);
  expect(lines(text, 'section[aria-labelledby="expected"] .note')[0]).toContain('Decided on 2026-04-01.');
  expect(lines(await open().page(), '#expected')).toEqual([]);
});
