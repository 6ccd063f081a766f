import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { readOrderSheet } from '../../src/intake/plan/readOrderSheet.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { contentFolder, shop } from '../commands/contentFolder.ts';
import { answered } from '../intake/draft/answered.ts';
import { atDesk, type AtDesk } from './atDesk.ts';

type Sent = Readonly<Record<string, string | readonly string[]>>;

interface Case {
  readonly root: string;
  readonly desk: AtDesk;
  readonly report: () => string;
}

/** A desk over a folder with a plan of two heads, twelve shots each, recorded on 9 May 2026 at nine. */
async function planned(slug = 'two'): Promise<Case> {
  const root = contentFolder({ 'shop.yaml': shop });
  const desk = atDesk(root);
  await plan(desk, slug);
  return { root, desk, report: () => readFileSync(join(root, 'reports', slug, 'report.md'), 'utf8') };
}

async function plan(
  desk: AtDesk,
  slug: string,
  names: readonly string[] = ['Alder', 'Birch'],
): Promise<void> {
  const response = await desk.post('/desk/plan/', {
    do: 'record',
    'answer.contender': names,
    'answer.varied': 'head',
    'answer.club': 'driver',
    'answer.shots': '12',
    'answer.slug': slug,
  });
  expect(response.status).toBe(303);
}

/** So many invented shots without a word of what was hit. */
const shots = (count: number, more: Readonly<Record<string, (shot: number) => string>> = {}): string =>
  [
    ['Shot', 'Carry (yd)', ...Object.keys(more)].join(','),
    ...Array.from({ length: count }, (_, i) =>
      [i + 1, 230 + ((i * 37) % 23) - 11, ...Object.values(more).map((cell) => cell(i + 1))].join(','),
    ),
    '',
  ].join('\n');

const drop = async (desk: AtDesk, csv: string, sent: Sent = {}): Promise<Response> =>
  desk.post('/desk/files/', { ...sent, files: new File([csv], 'session.csv', { type: 'text/csv' }) });

const told = (page: string): string =>
  parseHTML(page).document.querySelector('.notice.refused')?.textContent.replace(/\s+/g, ' ').trim() ?? '';

describe('the session of a plan', () => {
  test('goes into the draft of its plan, and its order sheet tells what was hit', async () => {
    const { root, desk, report } = await planned();
    const response = await drop(desk, shots(24), { plan: 'two' });
    expect([response.status, response.headers.get('location')]).toEqual([303, '/desk/reports/two/?joined']);
    expect(readdirSync(join(root, 'reports'))).toEqual(['two']);
    expect(report()).toContain('\nsession: session.csv\n');
    const page = await (await desk.get('/desk/reports/two/?joined')).text();
    expect(page).toContain('This is the session of the planned test.');
    const understood = parseHTML(page).document.querySelector('.understood')?.textContent ?? '';
    expect(understood).toMatch(/(?:Alder|Birch) 12, (?:Alder|Birch) 12/);
    expect(understood).toContain('12 complete rounds');
    expect(parseHTML(page).document.querySelector('section[aria-labelledby="planned"]')).toBeNull();
    const file = 'reports/two/report.md';
    writeFileSync(join(root, file), answered(file, report()));
    const { entries } = readOrderSheet('order.csv', readFileSync(join(root, 'reports/two/order.csv')));
    const [own] = loadSite(root).reports;
    expect(own?.session.shots.map(({ contender }) => contender)).toEqual(
      entries.map(({ contender }) => contender?.toLowerCase()),
    );
  });

  test('finds its plan by itself where it fits just one', async () => {
    const { root, desk } = await planned();
    const response = await drop(desk, shots(24), { plan: '', 'warm-ups': '0' });
    expect(response.headers.get('location')).toBe('/desk/reports/two/?joined');
    expect(readdirSync(join(root, 'reports'))).toEqual(['two']);
  });

  test('finds it from the inbox, too', async () => {
    const { root, desk } = await planned();
    mkdirSync(join(root, 'inbox'));
    writeFileSync(join(root, 'inbox/session.csv'), shots(24));
    const response = await desk.post('/desk/waiting/', { names: 'session.csv', plan: '' });
    expect(response.headers.get('location')).toBe('/desk/reports/two/?joined');
    expect(readdirSync(join(root, 'inbox'))).toEqual([]);
  });

  test('is not used where it is unsure; named, or with its warm-up swings, it is', async () => {
    const { root, desk, report } = await planned();
    const before = report();
    const page = await (await drop(desk, shots(34))).text();
    expect(told(page)).toBe(
      'This may be the session of a test that was planned, but that is not sure. Nothing was written. two: the file does not say what was hit and has 34 shots; the order sheet lists 24; if the first 10 were warm-up swings, write 10 where warm-up swings are asked for. Choose the files again, and say below to which plan they belong.',
    );
    expect(page).not.toContain('npm run');
    expect([report(), readdirSync(join(root, 'reports'))]).toEqual([before, ['two']]);
    const response = await drop(desk, shots(34), { plan: 'two', 'warm-ups': '10' });
    expect(response.headers.get('location')).toBe('/desk/reports/two/?joined');
    const { entries } = readOrderSheet('order.csv', readFileSync(join(root, 'reports/two/order.csv')));
    expect(entries.slice(0, 11).map(({ contender }) => contender === null)).toEqual([
      ...Array.from({ length: 10 }, () => true),
      false,
    ]);
  });

  test('fits two plans alike: the person says which, or that it is of neither', async () => {
    const { root, desk } = await planned();
    await plan(desk, 'three', ['Alder', 'Birch']);
    const unsure = told(await (await drop(desk, shots(24))).text());
    expect(unsure).toContain('two: the file fits it, and another one as well.');
    expect(unsure).toContain('three: the file fits it, and another one as well.');
    const front = parseHTML(await (await desk.get('/desk/')).text()).document;
    const choices = [...front.querySelectorAll('form.drop [name=plan]')].map((one) =>
      one.getAttribute('value'),
    );
    expect(choices).toEqual(['', 'three', 'two', 'no plan']);
    expect((await drop(desk, shots(24), { plan: 'three' })).headers.get('location')).toBe(
      '/desk/reports/three/?joined',
    );
    const own = await drop(desk, shots(24).replaceAll('230', '231'), { plan: 'no plan' });
    expect(own.headers.get('location')).toBe('/desk/reports/session/?new');
    expect(readdirSync(join(root, 'reports')).sort()).toEqual(['session', 'three', 'two']);
  });

  test.each(['gone', '../two', 'two/../two'])(
    'is refused for a plan that does not wait: %s',
    async (slug) => {
      const { root, desk } = await planned();
      const page = await (await drop(desk, shots(24), { plan: slug })).text();
      expect(page).toContain('This plan has its session already, or is not there any more.');
      expect(readdirSync(join(root, 'reports'))).toEqual(['two']);
      expect(readdirSync(join(root, 'reports/two'))).not.toContain('session.csv');
    },
  );

  test.each<[Sent, string]>([
    [{ 'warm-ups': '-1' }, 'Warm-up swings are a whole number up to 99. Nothing was written.'],
    [
      { plan: 'no plan', 'warm-ups': '10' },
      'Warm-up swings are counted only for a test that was planned. Nothing was written.',
    ],
  ])('is refused with warm-up swings that cannot be counted: %o', async (sent, sentence) => {
    const { root, desk } = await planned();
    expect(told(await (await drop(desk, shots(24), sent)).text())).toBe(sentence);
    expect(readdirSync(join(root, 'reports'))).toEqual(['two']);
  });
});

describe('when it was planned, as the record shows', () => {
  /** Every shot at this hour of 9 May 2026, the plan at nine. */
  const standing = async (hour: string): Promise<string | undefined> => {
    const { root, desk, report } = await planned();
    const time = (shot: number): string => `2026-05-09 ${hour}:${10 + shot}:00`;
    await drop(desk, shots(24, { Time: time }), { plan: 'two' });
    const file = 'reports/two/report.md';
    expect(report()).toMatch(/^date: 2026-05-09$/m);
    writeFileSync(join(root, file), answered(file, report()));
    return loadSite(root).reports[0]?.findings.design.plan;
  };

  test('a session of the same day came after it, or did not', async () => {
    expect(await standing('10')).toBe('on-record-that-day');
    expect(await standing('08')).toBe('afterwards');
  });
});
