import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { answerTo } from '../../src/desk/answeredWarnings.ts';
import { makeProblem } from '../../src/problems/makeProblem.ts';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { atDesk } from './atDesk.ts';
import { sentBy } from './form.ts';

const place = '/desk/reports/two-heads/';

const sentence = 'The bay is 300 yards long, and the next one 410 yards.';
const found = (figure: string): string => `"${figure}" in "${sentence}"`;

/** Two figures that each make a warning of their own, of one kind. */
const withWarnings = (change: (front: string) => string = (front) => front): string =>
  change(twoHeads()).replace('Six turns', `${sentence}\n\nSix turns`);

function open(report: string = withWarnings()) {
  const root = contentFolder({
    'shop.yaml': shop,
    'reports/two-heads/report.md': report,
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
      (await desk.post(place, { ...sentBy(await page()), ...changes })).text(),
  };
}

const told = (page: string): string =>
  [...parseHTML(page).document.querySelectorAll('.notice')]
    .map(({ textContent }) => textContent.replace(/\s+/g, ' ').trim())
    .join(' ');

/** What the buttons of warnings send. */
const buttonsIn = (page: string): readonly string[] =>
  [...parseHTML(page).document.querySelectorAll('.problems button')].map(
    (button) => button.getAttribute('value') ?? '',
  );

const answeredIn = (page: string): readonly string[] =>
  [...parseHTML(page).document.querySelectorAll('.answered li p')].map(({ textContent }) =>
    textContent.trim(),
  );

const warningsIn = (root: string): readonly (string | null)[] =>
  checkedSite(root).problems.map(({ kind, found }) => `${kind} ${found ?? ''}`);

describe('a warning that was read', () => {
  test('is answered by its button, and no other one with it', async () => {
    const { send, page, file, root } = open();
    const before = file();
    const [first = '', second = '', ...more] = buttonsIn(await page());
    expect([first, second, ...more]).toEqual([
      `seen number-unmatched ${found('300 yards')}`,
      `seen number-unmatched ${found('410 yards')}`,
    ]);
    expect(told(await send({ do: first }))).toContain('This warning stays quiet');
    expect(buttonsIn(await page())).toEqual([second]);
    expect(parseHTML(await page()).document.querySelector('#problems')?.textContent).toBe(
      'Good to know: 1 warning',
    );
    expect(answeredIn(await page())).toEqual([
      `A number that stands in no finding and no answer: ${found('300 yards')}`,
    ]);
    const lines = before.split('\n');
    expect(
      file()
        .split('\n')
        .filter((line) => !lines.includes(line)),
    ).toEqual(['seen:', `  - {warning: number-unmatched, about: '${found('300 yards')}'}`]);
    expect(file().split('\n').length).toBe(lines.length + 2);
    expect(warningsIn(root)).toEqual([`number-unmatched ${found('410 yards')}`]);
    await send({ do: second });
    expect(warningsIn(root)).toEqual([]);
  });

  test('is asked again by a button, and the file is as it was', async () => {
    const { send, page, file } = open();
    const before = file();
    for (const word of buttonsIn(await page())) await send({ do: word });
    expect(buttonsIn(await page())).toEqual([]);
    await send({ do: 'ask 0' });
    expect(buttonsIn(await page())).toEqual([`seen number-unmatched ${found('300 yards')}`]);
    await send({ do: 'ask 0' });
    expect(file()).toBe(before);
  });

  test('stays quiet while the draft has questions open', async () => {
    const { send, page, root } = open(
      withWarnings((front) => front.replace('consent: yes', 'consent:').replace('published', 'draft')),
    );
    writeFileSync(
      join(root, 'reports/two-heads/shots.csv'),
      twoHeadsCsv.replace('Carry (yd)', 'Carry (yd),Apxe Height').replace(/(\d\.\d)\n/g, '$1,30\n'),
    );
    expect(
      parseHTML(await page())
        .document.querySelector('#must')
        ?.textContent.trim(),
    ).toBe('Still to be answered (1)');
    const [word = '', ...more] = buttonsIn(await page());
    expect([word, ...more]).toEqual(['seen column-not-used Apxe Height']);
    await send({ do: word });
    expect(buttonsIn(await page())).toEqual([]);
    expect(answeredIn(await page())).toHaveLength(1);
  });

  test('saves with it what was typed in the form', async () => {
    const { send, page, file } = open();
    const [word = ''] = buttonsIn(await page());
    await send({
      do: word,
      'answer.title': 'A better title',
      narrative: `${sentence}\r\n\r\nMore.\r\n`,
    });
    expect(file()).toContain('title: A better title\n');
    expect(file()).toContain(`about: '${found('300 yards')}'`);
    expect(file().endsWith(`---\n${sentence}\n\nMore.\n`)).toBe(true);
  });

  test('is refused where the file was changed underneath, and what was typed stays', async () => {
    const { desk, page, root, file } = open();
    const sent = sentBy(await page());
    const [word = ''] = buttonsIn(await page());
    const elsewhere = withWarnings((front) => front.replace('varied: head', 'varied: clubhead'));
    writeFileSync(join(root, 'reports/two-heads/report.md'), elsewhere);
    for (const typed of [{}, { 'answer.title': 'My title' }]) {
      const text = await (await desk.post(place, { ...sent, ...typed, do: word })).text();
      expect(told(text)).toContain('Nothing was written.');
      expect(file()).toBe(elsewhere);
      if ('answer.title' in typed) expect(text).toContain('value="My title"');
    }
  });

  test.each([
    'seen number-unmatched 999 yards',
    'seen key-missing',
    'seen',
    'seen __proto__',
    'ask 7',
    'ask 0',
  ])('that is not there is refused, or nothing: %s', async (word) => {
    const { send, file } = open();
    const before = file();
    expect(told(await send({ do: word }))).toMatch(/There is no such warning any more|Nothing was changed/);
    expect(file()).toBe(before);
  });

  test('an error has no such button', async () => {
    const { page } = open(withWarnings().replace('Six turns', '{{ mean nothing alder }}'));
    const { document } = parseHTML(await page());
    expect(document.querySelectorAll('.problems li').length).toBeGreaterThan(0);
    const errors = [...document.querySelectorAll('.problems li')].filter(({ textContent }) =>
      textContent.includes('is unknown'),
    );
    expect(errors).toHaveLength(1);
    expect(errors[0]?.querySelector('button')).toBeNull();
  });

  test('the Enter key saves, whatever buttons stand above the text', async () => {
    const { document } = parseHTML(await open().page());
    const [first] = document.querySelectorAll('form.answers button');
    expect([first?.getAttribute('type'), first?.hasAttribute('name')]).toEqual(['submit', false]);
  });

  test('markup in what was found is text', async () => {
    const { page, send } = open(
      twoHeads((front) =>
        front.replace(
          'session: shots.csv',
          `session: shots.csv\nseen: [{warning: number-unmatched, about: '<img src=x>'}, {warning: '<img>'}]`,
        ),
      ),
    );
    for (const text of [await page(), await send({ do: 'seen <img src=x>' })])
      expect(parseHTML(text).document.querySelectorAll('img')).toHaveLength(0);
    expect(answeredIn(await page())).toEqual([
      'A number that stands in no finding and no answer: <img src=x>',
      '<img>',
    ]);
  });
});

describe('the entry of an answered warning', () => {
  const at = (columnName: string, found: string | null) =>
    makeProblem(
      'column-not-used',
      { file: 'reports/two-heads/shots.csv', columnName },
      { expected: 'x', found, cure: 'y' },
    );

  test('names what was found, or what it is about where that alone tells it apart', () => {
    const [one, other] = [at('Apex', '3'), at('Face', '3')];
    expect(answerTo(one, [one, other])).toEqual({ warning: 'column-not-used', about: 'Apex' });
    expect(answerTo(one, [one])).toEqual({ warning: 'column-not-used', about: '3' });
    expect(answerTo(at('Apex', null), [])).toEqual({ warning: 'column-not-used', about: 'Apex' });
    expect(answerTo(at('Apex', ' not recorded'), [])).toEqual({ warning: 'column-not-used', about: 'Apex' });
  });
});

describe('a published report that is changed', () => {
  test('asks for a correction, and leads to it', async () => {
    const { send } = open();
    const page = await send({ do: 'save', 'answer.title': 'A better title' });
    expect(told(page)).toContain('You changed a published report.');
    const way = parseHTML(page).document.querySelector('.notice a');
    expect(way?.getAttribute('href')).toBe(`${place}after/#correct`);
  });

  test('does not where nothing changed that readers see, or where it is a draft', async () => {
    const { send, page } = open();
    const [word = ''] = buttonsIn(await page());
    expect(told(await send({ do: word }))).not.toContain('You changed');
    expect(told(await send({ do: 'save' }))).toBe('Nothing was changed.');
    const draft = open(withWarnings((front) => front.replace('status: published', 'status: draft')));
    expect(told(await draft.send({ do: 'save', 'answer.title': 'A better title' }))).toBe('Saved.');
  });
});
