import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { atDesk, type AtDesk } from './atDesk.ts';
import { sentBy } from './form.ts';

const place = '/desk/reports/two-heads/';

interface Case {
  readonly root: string;
  readonly desk: AtDesk;
  readonly page: () => Promise<string>;
  readonly file: () => string;
  readonly send: (changes: Readonly<Record<string, string | readonly string[]>>) => Promise<string>;
}

function open(report: string = twoHeads(), more: Readonly<Record<string, string>> = {}): Case {
  const root = contentFolder({
    'shop.yaml': shop,
    'reports/two-heads/report.md': report,
    'reports/two-heads/shots.csv': twoHeadsCsv,
    ...more,
  });
  const desk = atDesk(root);
  const page = async (): Promise<string> => (await desk.get(place)).text();
  return {
    root,
    desk,
    page,
    file: () => readFileSync(join(root, 'reports/two-heads/report.md'), 'utf8'),
    send: async (changes) => (await desk.post(place, { ...sentBy(await page()), ...changes })).text(),
  };
}

const told = (page: string): string =>
  [...parseHTML(page).document.querySelectorAll('.notice')]
    .map(({ textContent }) => textContent.trim())
    .join(' ');

describe('the form of a report', () => {
  test('sent as it came, changes nothing', async () => {
    const { send, file } = open(twoHeads().replaceAll('\n', '\r\n'));
    const before = file();
    expect(told(await send({ do: 'save' }))).toBe('Nothing was changed.');
    expect(file()).toBe(before);
  });

  test('writes the answers that were changed, and every other line stays', async () => {
    const { send, file } = open(twoHeads((front) => front.replace('primary:', '# Chosen before.\nprimary:')));
    const before = file().split('\n');
    const page = await send({
      do: 'save',
      'answer.question': 'Is the "new" one longer: by how much?',
      'answer.hitters.one.saw_club': 'no',
      'answer.conditions.temperature': '21 °C',
    });
    expect(told(page)).toMatch(/^Saved\. You changed a published report\./);
    const after = file().split('\n');
    expect(before.filter((line) => !after.includes(line))).toEqual([
      'question: Does the new head carry farther than the old one?',
      'hitters: {one: {role: staff fitter, hand: right, consent: yes}}',
    ]);
    expect(after.filter((line) => !before.includes(line))).toEqual([
      `question: 'Is the "new" one longer: by how much?'`,
      'hitters: {one: {role: staff fitter, hand: right, consent: yes, saw_club: no}}',
      'conditions:',
      '  temperature: 21 °C',
    ]);
  });

  test('keeps a narrative to the byte, its first empty line too', async () => {
    const { send, file, page } = open(twoHeads());
    await send({ do: 'save', narrative: '\r\nFirst.\r\n\r\n{{ mean carry alder }} <b>&amp;</b>\r\n' });
    expect(file().endsWith('---\n\nFirst.\n\n{{ mean carry alder }} <b>&amp;</b>\n')).toBe(true);
    const written = file();
    await send({ do: 'save' });
    expect(file()).toBe(written);
    expect(await page()).toContain('{{ mean carry alder }} &lt;b&gt;&amp;amp;&lt;/b&gt;');
  });

  test('offers values with what they print, and charts', async () => {
    const { document } = parseHTML(await open().page());
    const offered = [...document.querySelectorAll('.menu li')].map(({ textContent }) =>
      textContent.replace(/\s+/g, ' '),
    );
    expect(offered).toContain('{{ mean carry alder }} 233 yards');
    expect(offered).toContain('{{ shots birch }} 6');
    expect(
      offered.find((line) => line.startsWith('{{ chart landing }}') || line.startsWith('{{ chart shots }}')),
    ).toBeDefined();
  });

  test('asks first for what must be answered, and only for that', async () => {
    const { page } = open(
      twoHeads((front) =>
        front
          .replace('question: Does the new head carry farther than the old one?', 'question:')
          .replace('consent: yes', 'consent:')
          .replace('status: published', 'status: draft'),
      ),
    );
    const { document } = parseHTML(await page());
    const first = document.querySelector('section[aria-labelledby="must"]');
    expect(first?.querySelector('h2')?.textContent.trim()).toBe('Still to be answered (2)');
    expect([...(first?.querySelectorAll('input') ?? [])].map((input) => input.getAttribute('name'))).toEqual([
      'answer.question',
      'answer.hitters.one.consent',
    ]);
  });

  test('tells what is wrong beside the answer that it is about, and the rest above', async () => {
    const { page } = open(
      twoHeads((front) => front.replace('date: 2026-05-02', 'date: 2026-31-04')).replace(
        'Six turns',
        '{{ mean nothing alder }}',
      ),
      { 'reports/two-heads/shots.csv': `${twoHeadsCsv}13,Alder,abc\n` },
    );
    const { document } = parseHTML(await page());
    const date = document.querySelector('[name="answer.date"]');
    expect(date?.getAttribute('aria-invalid')).toBe('true');
    const note = document.getElementById(date?.getAttribute('aria-describedby')?.split(' ')[0] ?? '');
    expect(note?.textContent).toContain('expected a date as year-month-day');
    expect(document.querySelector('.problems')?.textContent).toContain(
      'reports/two-heads/shots.csv, line 14',
    );
    expect(document.querySelector('#problems')?.textContent).toMatch(/^To be put right: \d errors/);
    // The list of all leads to the answer.
    const links = [...document.querySelectorAll('.problems a')].map((link) => link.getAttribute('href'));
    expect(links).toContain(`#${date?.getAttribute('id') ?? ''}`);
  });

  test('tells at the narrative what its words cannot stand for', async () => {
    const { page } = open(twoHeads().replace('Six turns', '{{ mean carry aldr }}'));
    const { document } = parseHTML(await page());
    const narrative = document.querySelector('#narrative');
    expect(narrative?.getAttribute('aria-invalid')).toBe('true');
    expect(document.getElementById('narrative-note-0')?.textContent).toContain(
      'Did you mean {{ mean carry alder }}?',
    );
    // The values stay at hand while one of them is mistyped.
    expect(document.querySelectorAll('.menu li').length).toBeGreaterThan(5);
  });

  test('sets a sentence that the shots support beside the one that they do not, to be taken as text', async () => {
    const { page } = open(
      twoHeads().replace('Six turns in one morning.', 'Dry.\n\nBirch "flew"\nfarther than Alder.'),
    );
    const { document } = parseHTML(await page());
    const offered = [...document.querySelectorAll('.field .offered')];
    expect(offered.map((one) => [one.getAttribute('data-instead'), one.getAttribute('data-take')])).toEqual([
      ['Birch "flew"\nfarther than Alder.', '{{ answer carry birch alder }}'],
    ]);
    const [first] = offered;
    expect(first?.querySelector('code')?.textContent).toBe('{{ answer carry birch alder }}');
    expect(first?.querySelector('.claim')?.id).toBe(first?.getAttribute('data-about'));
    expect(sentBy(await page())['narrative']?.[0]).toContain('Birch "flew"\r\nfarther than Alder.');
    // What a file would have to say of it is no business of somebody at a form.
    expect(document.querySelector('main')?.textContent).not.toContain('write under');
  });

  test('offers the answers of the last report', async () => {
    const { page } = open(twoHeads(), {
      'reports/earlier/report.md': twoHeads((front) =>
        front
          .replace(
            'supplied_by: our stock, sold_here: new',
            'supplied_by: lent by its distributor, sold_here: new',
          )
          .replace('role: staff fitter', 'role: head fitter'),
      ),
      'reports/earlier/shots.csv': twoHeadsCsv,
    });
    const { document } = parseHTML(await page());
    const offered = (id: string): readonly string[] =>
      [...document.querySelectorAll(`#answer-${id}-offered option`)].map(
        (option) => option.getAttribute('value') ?? '',
      );
    expect(offered('hitters-one-role')).toEqual(['head fitter']);
    expect(offered('contenders-birch-supplied_by')).toEqual(['our stock', 'lent by its distributor']);
    expect(offered('interests-seen_before')).toEqual(['nobody outside the shop', 'not recorded']);
    expect(offered('title')).toEqual([]);
  });

  test('markup in every field is text', async () => {
    const markup = `"><img src=x onerror=alert(1)>'&lt;`;
    const { page, desk } = open();
    const names = Object.keys(sentBy(await page())).filter(
      (name) => name.startsWith('answer.') || name === 'narrative',
    );
    expect(names.length).toBeGreaterThan(30);
    const sent = sentBy(await page());
    const response = await desk.post(place, {
      ...sent,
      ...Object.fromEntries(names.map((name) => [name, markup])),
      do: 'save',
    });
    for (const text of [await response.text(), await page(), await (await desk.get('/desk/')).text()]) {
      const { document } = parseHTML(text);
      expect(document.querySelectorAll('img')).toHaveLength(0);
      expect(text).not.toContain('<img');
    }
    const { document } = parseHTML(await page());
    expect(document.querySelector('[name="answer.question"]')?.getAttribute('value')).toBe(markup);
  });
});

describe('a file that was changed underneath', () => {
  test('is not written over; the page shows both, and a second save writes what was typed and nothing else', async () => {
    const { desk, page, file, root } = open();
    const sent = sentBy(await page());
    const elsewhere = twoHeads((front) =>
      front
        .replace('title: Two heads', 'title: Two heads, changed elsewhere')
        .replace('varied: head', 'varied: clubhead'),
    );
    writeFileSync(join(root, 'reports/two-heads/report.md'), elsewhere);
    const typed = { ...sent, do: 'save', 'answer.title': 'My title', narrative: 'My words.\r\n' };
    const refused = await (await desk.post(place, typed)).text();
    expect(file()).toBe(elsewhere);
    expect(told(refused)).toContain('Nothing was written.');
    const { document } = parseHTML(refused);
    expect(document.querySelector('[name="answer.title"]')?.getAttribute('value')).toBe('My title');
    expect(refused).toContain('In the file now: Two heads, changed elsewhere.');
    expect(document.querySelector('#narrative')?.textContent).toBe('\nMy words.\n');
    expect(document.querySelector('#narrative ~ details pre')?.textContent).toContain(
      'Six turns in one morning.',
    );
    // What was left alone in the form is as in the file.
    expect(document.querySelector('[name="answer.varied"]')?.getAttribute('value')).toBe('clubhead');

    await desk.post(place, { ...sentBy(refused), do: 'save' });
    expect(file()).toContain('title: My title\n');
    expect(file()).toContain('varied: clubhead\n');
    expect(file()).toContain('My words.\n');
  });

  test('that says by now what was typed is no conflict, as where a page is loaded again', async () => {
    const { desk, page, file } = open();
    const sent = { ...sentBy(await page()), do: 'save', 'answer.title': 'My title', narrative: 'My words.' };
    await desk.post(place, sent);
    const written = file();
    expect(written.endsWith('My words.\n')).toBe(true);
    expect(told(await (await desk.post(place, sent)).text())).toBe('Nothing was changed.');
    expect(file()).toBe(written);
  });

  test('keeps what was typed for an answer that nobody asks any more', async () => {
    const { desk, page, root } = open();
    const sent = {
      ...sentBy(await page()),
      do: 'save',
      'answer.contenders.birch.label': 'Birch, the old one',
    };
    writeFileSync(
      join(root, 'reports/two-heads/report.md'),
      twoHeads((front) => front.replace('  birch:', '  beech:')),
    );
    expect(told(await (await desk.post(place, sent)).text())).toContain('You typed: Birch, the old one.');
  });

  test('is not written over either where the change comes while it is saved', async () => {
    const root = contentFolder({
      'shop.yaml': shop,
      'reports/two-heads/report.md': twoHeads(),
      'reports/two-heads/shots.csv': twoHeadsCsv,
    });
    const desk = atDesk(root, { save: () => ({ kind: 'changed' }) });
    const page = await (await desk.get(place)).text();
    const response = await desk.post(place, { ...sentBy(page), do: 'save', 'answer.title': 'My title' });
    const text = await response.text();
    expect(told(text)).toContain('changed at this very moment');
    expect(text).toContain('value="My title"');
  });
});

describe('publishing', () => {
  const draft = (front: string): string => front.replace('status: published', 'status: draft');

  test('sets the status and the day, in lines of their own', async () => {
    const { send, file } = open(twoHeads(draft));
    expect(told(await send({ do: 'publish' }))).toContain('Published:');
    expect(file()).toBe(
      twoHeads().replace('date: 2026-05-02\n', 'date: 2026-05-02\npublished: 2026-05-09\n'),
    );
  });

  test('keeps the day of an earlier publication', async () => {
    const { send, file } = open(
      twoHeads((front) => draft(front).replace('status:', 'published: 2026-05-03\nstatus:')),
    );
    await send({ do: 'publish' });
    expect(file()).toContain('published: 2026-05-03\nstatus: published\n');
    expect(file()).not.toContain('2026-05-09');
  });

  test('is refused with reasons while errors stand, and what was typed is kept', async () => {
    const { send, file } = open(twoHeads((front) => draft(front).replace('consent: yes', 'consent:')));
    const page = await send({ do: 'publish', 'answer.title': 'A better title' });
    expect(told(page)).toContain('cannot be published yet');
    expect(told(page)).toContain('hitters.one.consent');
    expect(file()).toContain('status: draft\n');
    expect(file()).not.toContain('published:');
    expect(file()).toContain('title: A better title\n');
  });
});
