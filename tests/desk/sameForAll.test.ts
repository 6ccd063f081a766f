import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { fiveHeadsCsv } from '../commands/fiveHeads.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { atDesk } from './atDesk.ts';
import { sentBy } from './form.ts';

const place = '/desk/reports/two-heads/';

function open(change: (front: string) => string) {
  const root = contentFolder({
    'shop.yaml': shop,
    'reports/two-heads/report.md': twoHeads(change),
    'reports/two-heads/shots.csv': twoHeadsCsv,
  });
  const desk = atDesk(root);
  const page = async (): Promise<string> => (await desk.get(place)).text();
  return {
    root,
    desk,
    page,
    file: () => readFileSync(join(root, 'reports/two-heads/report.md'), 'utf8'),
    send: async (changes: Readonly<Record<string, string>>) =>
      (await desk.post(place, { ...sentBy(await page()), do: 'save', ...changes })).text(),
  };
}

/** Three heads, of which one says who supplied it. */
const threeHeads = (front: string): string =>
  front
    .replace('{label: Alder, supplied_by: our stock, sold_here: new}', '{label: Alder}')
    .replace(
      '{label: Birch, supplied_by: our stock, sold_here: used}',
      '\n    label: Birch # the old one\n    supplied_by:\n    sold_here:\n  cedar: {label: Cedar, supplied_by: lent by its maker}',
    );

const names = (page: string, selector: string): readonly string[] => [
  ...new Set(
    [...parseHTML(page).document.querySelectorAll(`${selector} :is(input, textarea)`)].map(
      (each) => each.getAttribute('name') ?? '',
    ),
  ),
];

const must = 'section[aria-labelledby=must]';

describe('one answer for all contenders', () => {
  test('stands before theirs, and is not counted among the open questions', async () => {
    const { page } = open(threeHeads);
    expect(names(await page(), must)).toEqual([
      'answer.same.supplied_by',
      'answer.same.sold_here',
      'answer.contenders.alder.supplied_by',
      'answer.contenders.alder.sold_here',
      'answer.contenders.birch.supplied_by',
      'answer.contenders.birch.sold_here',
      'answer.contenders.cedar.sold_here',
    ]);
    const { document } = parseHTML(await page());
    expect(document.querySelector('#must')?.textContent.trim()).toBe('Still to be answered (5)');
    expect(document.querySelector(`${must} legend`)?.textContent).toBe('One answer for all');
    expect(document.querySelector('label[for="answer-same-supplied_by"]')?.textContent).toBe(
      document.querySelector('label[for="answer-contenders-alder-supplied_by"]')?.textContent,
    );
  });

  test('is written for each that has none; what is typed for one, or stands there, wins', async () => {
    const { send, file } = open(threeHeads);
    const page = await send({
      'answer.same.supplied_by': 'our stock',
      'answer.same.sold_here': 'new',
      'answer.contenders.birch.sold_here': 'used',
    });
    expect(file()).toBe(
      twoHeads((front) =>
        threeHeads(front)
          .replace('{label: Alder}', '{label: Alder, supplied_by: our stock, sold_here: new}')
          .replace('supplied_by:\n', 'supplied_by: our stock\n')
          .replace('sold_here:\n', 'sold_here: used\n')
          .replace('lent by its maker}', 'lent by its maker, sold_here: new}'),
      ),
    );
    expect(names(page, must)).toEqual([]);
    expect(page).not.toContain('answer.same.');
  });

  test('is not asked where only one answer is open', async () => {
    const { page } = open((front) => front.replace('sold_here: new', 'sold_here:'));
    expect(names(await page(), must)).toEqual(['answer.contenders.alder.sold_here']);
  });

  test('offers what the other report said', async () => {
    const root = contentFolder({
      'shop.yaml': shop,
      'reports/two-heads/report.md': twoHeads(threeHeads),
      'reports/two-heads/shots.csv': twoHeadsCsv,
      'reports/earlier/report.md': twoHeads((front) => front.replace('our stock', 'lent by its distributor')),
      'reports/earlier/shots.csv': twoHeadsCsv,
    });
    const page = await (await atDesk(root).get(place)).text();
    const offered = [...parseHTML(page).document.querySelectorAll('#answer-same-supplied_by-offered option')];
    expect(offered.map((option) => option.getAttribute('value'))).toEqual([
      'lent by its distributor',
      'our stock',
    ]);
  });

  test('is not lost where the file was changed underneath: it stands at each', async () => {
    const { desk, page, root } = open(threeHeads);
    const sent = sentBy(await page());
    writeFileSync(
      join(root, 'reports/two-heads/report.md'),
      twoHeads((front) => threeHeads(front).replace('varied: head', 'varied: clubhead')),
    );
    const refused = await (
      await desk.post(place, { ...sent, do: 'save', 'answer.same.supplied_by': 'our stock' })
    ).text();
    expect(refused).toContain('Nothing was written.');
    expect(sentBy(refused)).toMatchObject({
      'answer.contenders.alder.supplied_by': ['our stock'],
      'answer.contenders.birch.supplied_by': ['our stock'],
      'answer.contenders.cedar.supplied_by': ['lent by its maker'],
    });
  });

  test('makes seven answers of fifteen for five heads', async () => {
    const root = contentFolder({ 'shop.yaml': `${shop}interests: {paid_by: the shop}\n` });
    const desk = atDesk(root);
    const file = new File([fiveHeadsCsv], 'five_heads_2026-04-11.csv', { type: 'text/csv' });
    const made = await desk.post('/desk/files/', { files: file });
    const report = (made.headers.get('location') ?? '').replace(/\?.*/, '');
    const before = await (await desk.get(report)).text();
    const answers = {
      'answer.question': 'Which head carries farthest?',
      'answer.same.supplied_by': 'our stock',
      'answer.same.sold_here': 'new',
      'answer.interests.commission_or_gifts': 'none',
      'answer.interests.seen_before': 'nobody outside the shop',
      ...Object.fromEntries(
        names(before, must)
          .filter((name) => /^answer\.hitters\..*\.(?:role|consent)$/.test(name))
          .map((name) => [name, name.endsWith('consent') ? 'yes' : 'staff fitter']),
      ),
    };
    expect(Object.keys(answers)).toHaveLength(7);
    const after = await (await desk.post(report, { ...sentBy(before), ...answers, do: 'save' })).text();
    expect(parseHTML(after).document.querySelector('#must')?.textContent.trim()).toBe(
      'Everything that must be answered is answered',
    );
  });
});
