import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { atDesk } from './atDesk.ts';
import { sentBy } from './form.ts';

const place = '/desk/reports/two-heads/';

function open(
  change: (front: string) => string = (front) => front,
  more: Readonly<Record<string, string>> = {},
) {
  const root = contentFolder({
    'shop.yaml': shop,
    'reports/two-heads/report.md': twoHeads(change),
    'reports/two-heads/shots.csv': twoHeadsCsv,
    ...more,
  });
  const desk = atDesk(root);
  const page = async (): Promise<string> => (await desk.get(place)).text();
  return {
    root,
    page,
    file: () => readFileSync(join(root, 'reports/two-heads/report.md'), 'utf8'),
    send: async (changes: Readonly<Record<string, string | readonly string[]>>) =>
      (await desk.post(place, { ...sentBy(await page()), do: 'save', ...changes })).text(),
  };
}

/** The choices of a question, the one that holds in brackets. */
function choicesOf(page: string, id: string): readonly string[] {
  const { document } = parseHTML(page);
  return [...document.querySelectorAll(`#answer-${id} .choice`)].map((choice) => {
    const words = choice.textContent.trim();
    return choice.querySelector('input')?.hasAttribute('checked') === true ? `[${words}]` : words;
  });
}

describe('which way is better', () => {
  test('is as usual until it is said, and again once that is chosen', async () => {
    const { page, send, file } = open();
    expect(choicesOf(await page(), 'better')).toEqual([
      '[As usual]',
      'More is better',
      'Less is better',
      'Neither is',
    ]);
    const before = file();
    const sent = sentBy(await page());
    expect(sent['answer.better']).toEqual(['']);
    await send({ 'answer.better': 'less' });
    expect(file()).toBe(before.replace('status: published\n', 'status: published\nbetter: less\n'));
    await send({ 'answer.better': '' });
    expect(choicesOf(await page(), 'better')[0]).toBe('[As usual]');
  });

  test('is asked for each metric that the file names by itself', async () => {
    const { page, send, file } = open((front) =>
      front.replace('session:', 'better: {carry: less}\nsession:'),
    );
    expect(choicesOf(await page(), 'better-carry')).toEqual([
      'As usual',
      'More is better',
      '[Less is better]',
      'Neither is',
    ]);
    expect(await page()).toContain('carry');
    await send({ 'answer.better.carry': 'neither' });
    expect(file()).toContain('better: {carry: neither}\n');
  });
});

test('rows that do not stand in the order of hitting are said with a choice', async () => {
  const { page, send, file, root } = open();
  expect(choicesOf(await page(), 'rows')).toEqual(['[They stand in the order of hitting]', 'They do not']);
  await send({ 'answer.rows': 'not-in-hit-order', 'answer.plan.order': 'random rotation' });
  expect(file()).toContain('\nrows: not-in-hit-order\n');
  expect(checkedSite(root).problems.filter(({ severity }) => severity === 'error')).toEqual([]);
});

describe('the order sheet', () => {
  test('is one of the files beside the report that hold no shots of it', async () => {
    const { page, send, file } = open(undefined, {
      'reports/two-heads/sheet.csv': 'Shot,Contender\n1,Alder\n',
      'reports/two-heads/bay.jpg': '',
    });
    expect(choicesOf(await page(), 'order_sheet')).toEqual(['[None]', 'sheet.csv']);
    await send({ 'answer.order_sheet': 'sheet.csv' });
    expect(file()).toContain('\norder_sheet: sheet.csv\n');
  });

  test('is not asked for where no file could be one', async () => {
    expect(choicesOf(await open().page(), 'order_sheet')).toEqual([]);
  });
});

test('what the flight model may stand in for is what the files have no column for', async () => {
  const { page, send, file } = open();
  expect(choicesOf(await page(), 'modelled')).toEqual(['apex', 'descent angle']);
  await send({ 'answer.modelled': ['', 'apex', 'descent_angle'] });
  expect(file()).toContain('\nmodelled: [apex, descent_angle]\n');
  expect(choicesOf(await page(), 'modelled')).toEqual(['[apex]', '[descent angle]']);
});

describe('the smallest gap that matters', () => {
  test('is asked of each main metric, whether it has a line or not', async () => {
    const { page, send, file } = open((front) =>
      front.replace('primary: carry\nmatters: {carry: 5 yd}\n', 'primary: Carry\n'),
    );
    const { document } = parseHTML(await page());
    expect(document.querySelector('label[for="answer-matters-carry"]')?.textContent).toBe(
      'The smallest gap that a customer should care about: carry',
    );
    await send({ 'answer.matters.carry': '6 yd' });
    expect(file()).toContain('\nmatters:\n  carry: 6 yd\n');
  });

  test('is asked once', async () => {
    const { document } = parseHTML(await open((front) => front.replace('{carry: 5', '{Carry: 5')).page());
    expect(document.querySelectorAll('[name^="answer.matters."]')).toHaveLength(1);
  });
});

test('what is compared and described elsewhere is named, with where that is', async () => {
  const { page, send, file } = open(
    (front) =>
      front.replace(/contenders:\n.*\n.*\n/, 'contenders: [alder, birch]\n').replace('primary:', 'primary:'),
    {
      'contenders/alder.yaml': 'label: <b>Alder</b>\nsupplied_by: our stock\nsold_here: new\nmatch: Alder\n',
      'contenders/birch.yaml': 'label: Birch\nsupplied_by: our stock\nsold_here: used\n',
    },
  );
  const { document } = parseHTML(await page());
  const parts = [...document.querySelectorAll('#group-compared fieldset.part')].slice(0, 2);
  expect(parts.map(({ textContent }) => textContent.replace(/\s+/g, ' ').trim())).toEqual([
    '<b>Alder</b> Described in contenders/alder.yaml, for every report that names it.',
    'Birch Described in contenders/birch.yaml, for every report that names it.',
  ]);
  expect(document.querySelectorAll('[name^="answer.same."]')).toHaveLength(0);
  const before = file();
  await send({});
  expect(file()).toBe(before);
});

test('a summary is asked for, and none has to be given', async () => {
  const { page, send, file } = open();
  expect(parseHTML(await page()).document.querySelector('label[for="answer-summary"]')?.textContent).toBe(
    'A summary in one or two sentences',
  );
  await send({ 'answer.summary': 'One sentence: and "another".' });
  expect(file()).toContain(`\nsummary: 'One sentence: and "another".'\n`);
});
