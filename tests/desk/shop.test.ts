import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { shopAnswers } from '../../src/intake/authored/shop.ts';
import { takesOf } from '../../src/intake/authored/takes.ts';
import { fieldsOf } from '../../src/desk/answerGroups.ts';
import { shopGroups } from '../../src/desk/shopGroups.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { contentFolder } from '../commands/contentFolder.ts';
import { atDesk } from './atDesk.ts';
import { sentBy } from './form.ts';

const place = '/desk/shop/';

function open(shop: string, more: Readonly<Record<string, string>> = {}) {
  const root = contentFolder({ 'shop.yaml': shop, ...more });
  const desk = atDesk(root);
  const page = async (): Promise<string> => (await desk.get(place)).text();
  return {
    root,
    page,
    file: () => readFileSync(join(root, 'shop.yaml'), 'utf8'),
    send: async (changes: Readonly<Record<string, string | readonly string[]>>) =>
      (await desk.post(place, { ...sentBy(await page()), ...changes })).text(),
  };
}

const whole = `# Ours.
name: Example Golf Workshop # as on the door
brand:
  # Brown, as the door.
  accent: {light: 7a3b12}
exports: [phone,   square]
defaults:
  units: metres   # since 2024
  monitor: {kind: camera}
  matters: {carry: 6 yd}
strict: no
`;

describe('the form of the shop', () => {
  test('asks everything that its file can answer, but for its version', () => {
    const asked = new Set(fieldsOf(shopGroups({}, [])).map(({ path }) => path[0]));
    const keys = (takesOf(shopAnswers).inside ?? []).map(([step]) => step.slice(1));
    expect(keys.filter((key) => !asked.has(key))).toEqual(['schema']);
    const names = fieldsOf(shopGroups({}, [])).map(({ name }) => name);
    for (const name of [
      'brand.site',
      'brand.booking',
      'brand.accent.dark',
      'reuse.licence_data',
      'defaults.place',
      'defaults.ball',
      'defaults.monitor',
      'defaults.matters.carry',
      'defaults.matters.spin_rate',
    ])
      expect(names).toContain(name);
    expect(new Set(names).size).toBe(names.length);
  });

  test('shows first who they are; the rest is folded, with how much of it is answered', async () => {
    const { document } = parseHTML(await open(whole).page());
    expect(
      [...document.querySelectorAll('form.answers > .field :is(input, textarea)')].map((each) =>
        each.getAttribute('name'),
      ),
    ).toEqual([
      'answer.name',
      'answer.address',
      'answer.contact',
      'answer.interests.paid_by',
      'answer.interests.commission_or_gifts',
      'answer.interests.seen_before',
      'answer.interests.sentence',
    ]);
    const folds = [...document.querySelectorAll('form.answers > details')];
    expect(folds.every((fold) => !fold.hasAttribute('open'))).toBe(true);
    expect(folds.map((fold) => fold.querySelector('summary')?.textContent)).toEqual([
      'Your name on the pages: 1 of 7 answered',
      expect.stringMatching(/^What is the same in every report: 3 of \d+ answered$/),
      'How others may use charts and data: 0 of 4 answered',
      'Pictures and wording: 2 of 2 answered',
    ]);
  });

  test('sent as it came, changes nothing', async () => {
    const { send, file } = open(whole);
    expect(await send({})).toContain('Nothing was changed.');
    expect(file()).toBe(whole);
  });

  test('writes what was answered in its own lines', async () => {
    const { send, file, root } = open(whole);
    const page = await send({
      'answer.brand.site': 'https://golf.example/',
      'answer.brand.booking': 'https://golf.example/book?who="you"&when=now',
      'answer.defaults.units': 'yards',
      'answer.defaults.locale': 'en-US',
      'answer.defaults.place': 'indoors: bay 2',
      'answer.defaults.matters.spin_rate': '400 rpm',
      'answer.defaults.monitor.kind': 'radar',
      'answer.reuse.credit': 'Example Golf Workshop',
      'answer.exports': ['', 'phone', 'square', 'video'],
      'answer.strict': 'yes',
    });
    expect(page).toContain('Saved.');
    expect(file()).toBe(`# Ours.
name: Example Golf Workshop # as on the door
brand:
  # Brown, as the door.
  accent: {light: 7a3b12}
  site: 'https://golf.example/'
  booking: 'https://golf.example/book?who="you"&when=now'
exports: [phone, square, video]
defaults:
  units: yards   # since 2024
  monitor: {kind: radar}
  matters: {carry: 6 yd, spin_rate: 400 rpm}
  locale: en-US
  place: 'indoors: bay 2'
strict: yes
reuse:
  credit: Example Golf Workshop
`);
    const { shop, problems } = loadSite(root);
    expect(problems.map(({ kind }) => kind)).toEqual(['no-reports']);
    expect(shop).toMatchObject({
      strict: true,
      exports: ['phone', 'square', 'video'],
      brand: { booking: 'https://golf.example/book?who=%22you%22&when=now' },
      defaults: { units: 'yards', locale: 'en-US' },
    });
  });

  test('offers the pictures that lie beside the file as a logo', async () => {
    const { page, send, file } = open('name: Example\n', {
      'logo.svg':
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20"><path d="M0 0h40v20H0z"/></svg>',
      '.hidden.svg': '',
      'notes.txt': '',
    });
    const { document } = parseHTML(await page());
    const offered = [...document.querySelectorAll('#answer-brand-logo .choice')];
    expect(offered.map(({ textContent }) => textContent.trim())).toEqual(['None', 'logo.svg']);
    await send({ 'answer.brand.logo': 'logo.svg' });
    expect(file()).toBe('name: Example\nbrand:\n  logo: logo.svg\n');
  });

  test('tells what is wrong at its field, in the fold that then stands open', async () => {
    const { page } = open(
      'name: Example\nbrand: {logo: none.svg, accent: {light: ffffff}}\ndefaults: {units: feet}\n',
    );
    const { document } = parseHTML(await page());
    const about = (id: string): string =>
      document.getElementById(`answer-${id}-note-0`)?.textContent.replace(/\s+/g, ' ') ?? '';
    expect(about('defaults-units')).toContain('yards');
    expect(document.querySelector('#group-defaults')?.hasAttribute('open')).toBe(true);
    const drawn = parseHTML(
      await open('name: Example\nbrand: {logo: none.svg, accent: {light: ffffff}}\n').page(),
    );
    expect(drawn.document.getElementById('answer-brand-logo-note-0')?.textContent).toContain('none.svg');
    expect(drawn.document.getElementById('answer-brand-accent-light-note-0')?.textContent).toContain(
      'too faint',
    );
    expect(drawn.document.querySelector('#group-brand')?.hasAttribute('open')).toBe(true);
  });

  test('markup in every field is text', async () => {
    const markup = `"><img src=x onerror=alert(1)>'&lt;`;
    const { page, send } = open(whole);
    const names = Object.keys(sentBy(await page())).filter((name) => name.startsWith('answer.'));
    expect(names.length).toBeGreaterThan(25);
    for (const text of [await send(Object.fromEntries(names.map((name) => [name, markup]))), await page()]) {
      expect(parseHTML(text).document.querySelectorAll('img')).toHaveLength(0);
      expect(text).not.toContain('<img');
    }
  });
});
