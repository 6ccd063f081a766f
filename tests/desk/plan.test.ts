import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { planCommand } from '../../src/commands/plan/planCommand.ts';
import type { PlanOptions } from '../../src/commands/plan/planOptions.ts';
import { planGroups, nameFields, ruleFields } from '../../src/desk/planFields.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { listen } from '../commands/listen.ts';
import reference from '../reference/plan/plan.json' with { type: 'json' };
import { atDesk, type AtDesk } from './atDesk.ts';
import { sentBy } from './form.ts';

const place = '/desk/plan/';
type Sent = Readonly<Record<string, string | readonly string[]>>;

const clock = { today: '2026-05-09', time: '09:00' };

const twoNames: Sent = {
  'answer.contender': ['Alder 9°', '', 'Birch, 9°'],
  'answer.varied': 'head',
  'answer.club': 'driver',
  'answer.spread': '8 yd',
};

const fresh = (more: Readonly<Record<string, string>> = {}): string =>
  contentFolder({ 'shop.yaml': shop, ...more });

/** What a browser sends whose page is as it came, but for what is changed. */
const sentFrom = async (desk: AtDesk, changes: Sent): Promise<Sent> => ({
  ...sentBy(await (await desk.get(place)).text()),
  ...changes,
});

const record = async (desk: AtDesk, changes: Sent): Promise<Response> =>
  desk.post(place, await sentFrom(desk, { ...changes, do: 'record' }));

const arithmetic = async (desk: AtDesk, changes: Sent): Promise<string> =>
  (await desk.post('/desk/plan/arithmetic/', await sentFrom(desk, changes))).text();

async function command(contentDir: string, options: PlanOptions): Promise<string> {
  const { terminal, said } = listen();
  await planCommand({ contentDir, options, asker: null, ...clock, terminal });
  return said();
}

const spaced = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Every sentence and row of a piece of a page, as a terminal would have them: the label, then the text. */
const told = (page: string): readonly string[] => {
  const { document } = parseHTML(page);
  return [
    ...[...document.querySelectorAll('p')].map(({ textContent }) => spaced(textContent)),
    ...[...document.querySelectorAll('dl.finds > div')].map((row) => {
      const [label, text] = row.children;
      return spaced(`${label?.textContent.toLowerCase() ?? ''} ${text?.textContent ?? ''}`);
    }),
  ];
};

const files = (root: string, slug: string): Record<string, string> =>
  Object.fromEntries(
    readdirSync(join(root, 'reports', slug))
      .sort()
      .map((name) => [name, readFileSync(join(root, 'reports', slug, name), 'utf8')]),
  );
const ledger = (root: string): string => readFileSync(join(root, 'ledger.json'), 'utf8');

describe('the arithmetic of a plan', () => {
  test.each<[string, Sent, PlanOptions]>([
    [
      'a spread that was typed',
      { ...twoNames, 'answer.shots': '12' },
      { contender: ['Alder 9°', 'Birch, 9°'], varied: 'head', club: 'driver', spread: '8 yd', shots: '12' },
    ],
    [
      'a usual spread, and what is proposed',
      { ...twoNames, 'answer.spread': '' },
      { contender: ['Alder 9°', 'Birch, 9°'], varied: 'head', club: 'driver' },
    ],
    [
      'four in spells, by another metric',
      {
        'answer.contender': ['A', 'B', 'C', 'D', '', ''],
        'answer.varied': 'ball',
        'answer.club': 'iron',
        'answer.metric': 'ball speed',
        'answer.player': 'good',
        'answer.order': 'mini-blocks-3',
        'answer.shots': '18',
      },
      {
        contender: ['A', 'B', 'C', 'D'],
        varied: 'ball',
        club: 'iron',
        metric: 'ball_speed',
        player: 'good',
        order: 'mini-blocks-3',
        shots: '18',
      },
    ],
  ])('is that of the command, word for word: %s', async (_name, sent, options) => {
    const root = fresh();
    const said = (await command(root, { ...options, 'dry-run': true })).split('\n').map(spaced);
    const lines = told(await arithmetic(atDesk(root), sent));
    expect(lines.length).toBeGreaterThan(6);
    expect(lines.filter((line) => !said.includes(line))).toEqual([]);
    const cut = said.indexOf('');
    expect(
      said.slice(cut).filter((line) => /^(For a true|In mini|can find|may miss|luck|level)/.test(line)),
    ).toEqual(lines.filter((line) => /^(For a true|In mini|can find|may miss|luck|level)/.test(line)));
  });

  test('counts the shots that R counts (the figures of foresight.test.ts)', async () => {
    const desk = atDesk(fresh());
    const [one] = reference.needs.filter(({ sd, gap }) => sd === 8 && gap === 5);
    const page = await arithmetic(desk, twoNames);
    expect(told(page)).toContain(
      `For a true gap of 5 yd to be found 4 times in 5: ${one?.n ?? ''} shots with each.`,
    );
  });

  test('uses the spread of own sessions where there are enough', async () => {
    const own = twoHeads((front) =>
      front.replace('title: Two heads', 'title: Two driver heads').replace('invented_data: yes\n', ''),
    );
    const root = fresh({ 'reports/old/report.md': own, 'reports/old/shots.csv': twoHeadsCsv });
    const { 'answer.spread': _, ...untyped } = twoNames;
    expect(told(await arithmetic(atDesk(root), untyped))[0]).toMatch(
      /from your own sessions with a driver: 12 shots in one report\.$/,
    );
  });

  test('says what it lacks, each a way to its question', async () => {
    const { document } = parseHTML(await (await atDesk(fresh()).get(place)).text());
    const lacking = [...document.querySelectorAll('.worked-out li a')];
    expect(lacking.map(({ textContent }) => textContent)).toEqual([
      'What is compared?',
      'The one thing that differs?',
      'Which kind of club?',
    ]);
    for (const link of lacking)
      expect(document.querySelector(link.getAttribute('href') ?? '')).not.toBeNull();
    expect(document.querySelectorAll('[aria-invalid]')).toHaveLength(0);
  });

  test('without script a button shows the page again, with what was typed', async () => {
    const root = fresh();
    const desk = atDesk(root);
    const page = await (await desk.post(place, await sentFrom(desk, { ...twoNames, do: 'work-out' }))).text();
    const { document } = parseHTML(page);
    expect(
      [...document.querySelectorAll('[name="answer.contender"]')].map((one) => one.getAttribute('value')),
    ).toEqual(['Alder 9°', 'Birch, 9°', '', '', '', '']);
    expect(document.querySelector('.finds')).not.toBeNull();
    expect(readdirSync(root)).toEqual(['shop.yaml']);
  });

  test('what is proposed follows the other answers until somebody types another one', async () => {
    const desk = atDesk(fresh());
    const speed = { ...twoNames, 'answer.spread': '', 'answer.metric': 'ball speed' };
    const typedIn = (page: string, name: string): string =>
      parseHTML(page).document.querySelector(`[name="${name}"]`)?.getAttribute('value') ?? '';
    const followed = await (await desk.post(place, await sentFrom(desk, speed))).text();
    expect([typedIn(followed, 'answer.matters'), typedIn(followed, 'proposed.matters')]).toEqual([
      '2 mph',
      '2 mph',
    ]);
    const own = await sentFrom(desk, { ...speed, 'answer.matters': '4 mph', 'answer.shots': '14' });
    const kept = await (await desk.post(place, own)).text();
    expect([typedIn(kept, 'answer.matters'), typedIn(kept, 'answer.shots')]).toEqual(['4 mph', '14']);
  });
});

describe('a plan that is recorded', () => {
  test.each<[string, Sent, PlanOptions]>([
    [
      'with what is proposed',
      twoNames,
      { contender: ['Alder 9°', 'Birch, 9°'], varied: 'head', club: 'driver', spread: '8 yd' },
    ],
    [
      'with every answer',
      {
        ...twoNames,
        'answer.matters': '7 yd',
        'answer.hitter': 'staff fitter',
        'answer.order': 'mini-blocks-2',
        'answer.shots': '14',
        'answer.expectation': 'Alder: "longer", by little',
        'answer.exclusion-rule': 'a misread, and nothing else',
        'answer.stopping-rule': 'after 14 with each, or at dusk',
        'answer.warm-up': 'twelve swings',
        'answer.title': 'Two heads, one shaft',
        'answer.question': 'Which one is longer?',
        'answer.slug': 'two',
      },
      {
        contender: ['Alder 9°', 'Birch, 9°'],
        varied: 'head',
        club: 'driver',
        spread: '8 yd',
        matters: '7 yd',
        hitter: 'staff fitter',
        order: 'mini-blocks-2',
        shots: '14',
        expectation: 'Alder: "longer", by little',
        'exclusion-rule': 'a misread, and nothing else',
        'stopping-rule': 'after 14 with each, or at dusk',
        'warm-up': 'twelve swings',
        title: 'Two heads, one shaft',
        question: 'Which one is longer?',
        slug: 'two',
      },
    ],
  ])('is to the byte what the command writes: %s', async (_name, sent, options) => {
    const [byDesk, byCommand] = [fresh(), fresh()];
    const response = await record(atDesk(byDesk), sent);
    const said = await command(byCommand, options);
    const [slug = ''] = readdirSync(join(byCommand, 'reports'));
    expect(said).toContain('Put on record');
    expect([response.status, response.headers.get('location')]).toEqual([
      303,
      `/desk/reports/${slug}/?planned`,
    ]);
    expect(files(byDesk, slug)).toEqual(files(byCommand, slug));
    expect(Object.keys(files(byDesk, slug))).toEqual(['hitting-sheet.html', 'order.csv', 'report.md']);
    expect(ledger(byDesk)).toBe(ledger(byCommand));
  });

  test('is told what to do next, and waits on the first page', async () => {
    const root = fresh();
    const desk = atDesk(root);
    const to = (await record(desk, twoNames)).headers.get('location') ?? '';
    const { document } = parseHTML(await (await desk.get(to)).text());
    expect(document.querySelector('.notice')?.textContent).toContain('The plan is on record.');
    const links = [...document.querySelectorAll('section[aria-labelledby="planned"] a')];
    expect(links.map((link) => link.getAttribute('href'))).toEqual(['/desk/plan/alder-9-and-birch-9/sheet/']);
    // Its session is asked for where it can be dropped, and nowhere else.
    expect(document.querySelector('.problems')).toBeNull();
    const front = parseHTML(await (await desk.get('/desk/')).text()).document;
    expect(spaced(front.querySelector('section[aria-labelledby="plans"] li')?.textContent ?? '')).toBe(
      'Alder 9° and Birch, 9° Planned on 9 May 2026. The sheet to print. Drop the session file of this plan here.',
    );
  });

  test('two at once are two, each on record', async () => {
    const root = fresh();
    const desk = atDesk(root);
    const answers = await Promise.all([record(desk, twoNames), record(desk, twoNames)]);
    expect(answers.map(({ status }) => status)).toEqual([303, 303]);
    expect(readdirSync(join(root, 'reports')).sort()).toEqual([
      'alder-9-and-birch-9',
      'alder-9-and-birch-9-2',
    ]);
    const { plans } = JSON.parse(ledger(root));
    expect(plans.map(({ slug }: { slug: string }) => slug).sort()).toEqual([
      'alder-9-and-birch-9',
      'alder-9-and-birch-9-2',
    ]);
  });
});

/** What stands beside each answer that cannot be used, by the name of the answer. */
function beside(page: string): Record<string, string> {
  const { document } = parseHTML(page);
  return Object.fromEntries(
    [...document.querySelectorAll('.field .error')].map((error) => [
      error.closest('.field')?.querySelector('input')?.getAttribute('name') ?? '',
      spaced(error.textContent),
    ]),
  );
}

describe('a plan that is refused', () => {
  test('says at each question what it lacks, and nothing is written', async () => {
    const root = fresh();
    const response = await record(atDesk(root), { 'answer.contender': ['Alder'], 'answer.matters': '5' });
    const page = await response.text();
    expect(response.status).toBe(200);
    expect(beside(page)).toEqual({
      'answer.contender': 'The value cannot be used: expected 2 to 6 names; found Alder. Put it right here.',
      'answer.varied': 'A required answer is missing: expected one noun; found nothing. A plan needs it.',
      'answer.club':
        'A required answer is missing: expected driver, iron, wedge or other; found nothing. A plan needs it.',
      'answer.matters': expect.stringMatching(
        /^The value cannot be used: expected a number with a unit.*found 5\./,
      ),
    });
    const { document } = parseHTML(page);
    expect(document.querySelector('[role=alert]')?.textContent).toContain('Nothing was written.');
    for (const link of document.querySelectorAll('.problems a'))
      expect(document.querySelector(link.getAttribute('href') ?? '')).not.toBeNull();
    expect(document.querySelectorAll('.problems li')).toHaveLength(4);
    expect(readdirSync(root)).toEqual(['shop.yaml']);
  });

  test.each([
    ['Two Heads', 'The value cannot be used: expected small letters, digits and single hyphens'],
    ['../../out', 'The value cannot be used: expected small letters, digits and single hyphens'],
    ['two-heads', 'found two-heads. Take another one, such as two-heads-2, or leave it empty.'],
  ])('by its name: %s', async (slug, sentence) => {
    const root = fresh({
      'reports/two-heads/report.md': twoHeads(),
      'reports/two-heads/shots.csv': twoHeadsCsv,
    });
    const page = await (await record(atDesk(root), { ...twoNames, 'answer.slug': slug })).text();
    expect(beside(page)['answer.slug']).toContain(sentence);
    expect(readFileSync(join(root, 'reports/two-heads/report.md'), 'utf8')).toBe(twoHeads());
    expect([readdirSync(root), readdirSync(join(root, 'reports'))]).toEqual([
      ['reports', 'shop.yaml'],
      ['two-heads'],
    ]);
  });

  test('by a ledger that cannot be read', async () => {
    const root = fresh({ 'ledger.json': '{' });
    const page = await (await record(atDesk(root), twoNames)).text();
    expect(page).toContain('The plan could not be put on record. Nothing was written.');
    expect([ledger(root), existsSync(join(root, 'reports/alder-9-and-birch-9'))]).toEqual(['{', false]);
  });

  test('without the token of the desk, or from elsewhere', async () => {
    const root = fresh();
    const desk = atDesk(root);
    for (const to of [place, '/desk/plan/arithmetic/']) {
      expect((await desk.post(to, { ...twoNames, do: 'record', token: 'guessed' })).status).toBe(403);
      expect(
        (await desk.post(to, { ...twoNames, do: 'record' }, { origin: 'http://else.example' })).status,
      ).toBe(403);
    }
    expect(readdirSync(root)).toEqual(['shop.yaml']);
  });

  test('markup in every answer is text, on the page, in the arithmetic and on the sheet', async () => {
    const root = fresh();
    const desk = atDesk(root);
    const nasty = (name: string): string => `<b id="x">${name}</b>"'&<script>`;
    const texts = [...planGroups('carry').flatMap(({ fields }) => fields), ...ruleFields, ...nameFields]
      .filter(({ control, name }) => control === 'text' && name !== 'contender')
      .map(({ name }) => [`answer.${name}`, nasty(name)] as const);
    const all: Sent = {
      ...Object.fromEntries(texts),
      'answer.contender': [nasty('one'), nasty('two')],
      'answer.club': nasty('club'),
    };
    const looksClean = (page: string): void => {
      const { document } = parseHTML(page);
      expect(document.querySelectorAll('b, [id=x], script:not([src])')).toHaveLength(0);
    };
    const page = await (await record(desk, all)).text();
    looksClean(page);
    looksClean(await arithmetic(desk, all));
    for (const [name, typed] of texts)
      expect(parseHTML(page).document.querySelector(`[name="${name}"]`)?.getAttribute('value')).toBe(typed);
    const readable = ['answer.slug', 'answer.metric', 'answer.matters', 'answer.shots', 'answer.spread'];
    const blank = Object.fromEntries(readable.map((name) => [name, '']));
    const to =
      (
        await record(desk, {
          ...all,
          ...twoNames,
          ...Object.fromEntries(texts),
          'answer.contender': [nasty('one'), nasty('two')],
          ...blank,
        })
      ).headers.get('location') ?? '';
    looksClean(await (await desk.get(to)).text());
    looksClean(await (await desk.get('/desk/')).text());
    const [slug = ''] = readdirSync(join(root, 'reports'));
    const sheet = await (await desk.get(`/desk/plan/${slug}/sheet/`)).text();
    looksClean(sheet);
    expect(sheet).toContain('&lt;b id=');
  });
});

test('the answers of the last report are offered', async () => {
  const old = twoHeads((front) =>
    front.replace(
      'primary: carry',
      'plan: {exclusion_rule: only a misread, warm_up: twelve swings}\nprimary: carry',
    ),
  );
  const desk = atDesk(fresh({ 'reports/old/report.md': old, 'reports/old/shots.csv': twoHeadsCsv }));
  const { document } = parseHTML(await (await desk.get(place)).text());
  const offered = (name: string): (string | null)[] => {
    const list = document.querySelector(`[name="answer.${name}"]`)?.getAttribute('list') ?? '';
    return [...document.querySelectorAll(`#${list} option`)].map((option) => option.getAttribute('value'));
  };
  expect(offered('contender')).toEqual(['Alder', 'Birch']);
  expect(offered('varied')).toEqual(['head']);
  expect(offered('hitter')).toEqual(['staff fitter', 'not recorded']);
  expect(offered('exclusion-rule')).toEqual(['only a misread', 'not recorded']);
  expect(offered('warm-up')).toEqual(['twelve swings', 'not recorded']);
  expect(offered('metric')).toContain('ball speed');
});

test('the sheet is the file of the command, and nothing in it can run or ask for anything', async () => {
  const root = fresh();
  const desk = atDesk(root);
  await record(desk, { ...twoNames, 'answer.slug': 'two' });
  const response = await desk.get('/desk/plan/two/sheet/');
  expect(await response.text()).toBe(readFileSync(join(root, 'reports/two/hitting-sheet.html'), 'utf8'));
  const policy = response.headers.get('content-security-policy') ?? '';
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain('sandbox');
  expect((await desk.get('/desk/plan/nowhere/sheet/')).status).toBe(404);
  expect((await desk.get('/desk/plan/%2e%2e/sheet/')).status).toBe(404);
});

test('only the page that asks for its arithmetic may ask the desk for anything', async () => {
  const desk = atDesk(fresh());
  const policyOf = async (path: string): Promise<string> =>
    (await desk.get(path)).headers.get('content-security-policy') ?? '';
  expect(await policyOf(place)).toContain("connect-src 'self'");
  expect(await policyOf('/desk/')).not.toContain('connect-src');
  expect(await policyOf('/desk/')).toContain("style-src 'self'");
});
