import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { reportAtDesk } from '../../src/desk/reportAtDesk.ts';
import { correctionItems } from '../../src/kit/correctionFeed.ts';
import { sayNotice } from '../../src/prose/english/notices.ts';
import { noticesOf } from '../../src/prose/notices.ts';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { atDesk, seenIn, type AtDesk } from './atDesk.ts';

const place = '/desk/reports/two-heads/after/';

interface Case {
  readonly root: string;
  readonly desk: AtDesk;
  readonly page: () => Promise<string>;
  readonly file: () => string;
  /** Presses a button with what was typed; gives what the page then tells. */
  readonly press: (word: string, typed?: Readonly<Record<string, string>>) => Promise<string>;
}

/** Another session: the same one in two reports is told. */
const newerCsv = twoHeadsCsv.replaceAll('231.2', '232.2');

const newer = (change: (front: string) => string = (front) => front): string =>
  change(twoHeads((front) => front.replace('title: Two heads', 'title: Two heads, a year on')));

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
    press: async (word, typed = {}) => {
      const response = await desk.post(place, { do: word, seen: seenIn(await page()), ...typed });
      const to = response.headers.get('location');
      return told(to === null ? await response.text() : await (await desk.get(to)).text());
    },
  };
}

const beside = { 'reports/newer/report.md': newer(), 'reports/newer/shots.csv': newerCsv };

const told = (page: string): string =>
  [...parseHTML(page).document.querySelectorAll('.notice')]
    .map(({ textContent }) => textContent.replace(/\s+/g, ' ').trim())
    .join(' ');

const correction = {
  'answer.correction.date': '2026-05-08',
  'answer.correction.what': 'the loft of "Alder": it was measured anew',
  'answer.correction.was': '9.0°',
  'answer.correction.now': '9.5°, # and no less',
};

/** Lines of the file that were not there before, and those that are gone. */
function difference(before: string, after: string): { readonly gone: string[]; readonly come: string[] } {
  const [then, now] = [before.split('\n'), after.split('\n')];
  return {
    gone: then.filter((line) => !now.includes(line)),
    come: now.filter((line) => !then.includes(line)),
  };
}

const errorsIn = (root: string): readonly string[] =>
  checkedSite(root)
    .problems.filter(({ severity }) => severity === 'error')
    .map(({ kind }) => kind);

const frontIn = (root: string) => {
  const source = loadSite(root).reports.find(({ source: { slug } }) => slug === 'two-heads')?.source;
  if (source === undefined) throw new Error('The report cannot be read.');
  return source.front;
};

const noticeIn = (root: string): string =>
  noticesOf(frontIn(root))
    .map((notice) => sayNotice(notice, { locale: 'en-GB', newer: 'Two heads, a year on' }))
    .map(({ label, words }) => `${label} ${words}`.trim())
    .join(' ');

describe('a correction', () => {
  test('is written in lines of its own, and stands in the notice and in the feed', async () => {
    const { press, file, root, page } = open(
      twoHeads((front) => front.replace('primary:', '# Chosen before.\nprimary:   ')),
    );
    const before = file();
    expect(await press('correct', correction)).toContain('The correction is written down.');
    expect(difference(before, file())).toEqual({
      gone: [],
      come: [
        'corrections:',
        `  - {date: 2026-05-08, what: 'the loft of "Alder": it was measured anew', was: 9.0°, now: '9.5°, # and no less'}`,
      ],
    });
    expect(errorsIn(root)).toEqual([]);
    expect(noticeIn(root)).toBe('Corrected 8 May 2026. The loft of "Alder": it was measured anew.');
    const [item] = correctionItems(loadSite(root).reports, (path) => `https://shop.example${path}`);
    expect(item?.date).toBe('2026-05-08');
    const { document } = parseHTML(await page());
    expect(
      document.querySelector('#correct ~ form .rows li p')?.textContent.replace(/\s+/g, ' ').trim(),
    ).toBe(
      '8 May 2026. The loft of "Alder": it was measured anew. It said: 9.0°. It now says: 9.5°, # and no less.',
    );
  });

  test('joins those that stand there, whatever their style, and the newest is shown first', async () => {
    const { press, file, page } = open(
      twoHeads((front) =>
        front.replace(
          'status: published',
          'corrections:\n  # The first one.\n  - date: 2026-05-03\n    what: a typing slip\n    was: Two head\n    now: Two heads\nstatus: published',
        ),
      ),
    );
    const before = file();
    await press('correct', correction);
    const { gone, come } = difference(before, file());
    expect(gone).toEqual([]);
    expect(come).toHaveLength(1);
    const { document } = parseHTML(await page());
    const days = [...document.querySelectorAll('#correct ~ form .rows strong')].map(
      ({ textContent }) => textContent,
    );
    expect(days).toEqual(['8 May 2026.', '3 May 2026.']);
  });

  test('offers the day where the shop is', async () => {
    const { document } = parseHTML(await open().page());
    expect(document.querySelector('[name="answer.correction.date"]')?.getAttribute('value')).toBe(
      '2026-05-09',
    );
    const labels = [...document.querySelectorAll('#correct ~ form .field label')].map(({ textContent }) =>
      textContent.trim(),
    );
    expect(labels).toEqual([
      'The day of the correction',
      'What was corrected',
      'What stood there',
      'What stands there now',
    ]);
  });

  test('can be taken out while it is not on record', async () => {
    const { press, file } = open();
    const before = file();
    await press('correct', correction);
    expect(await press('uncorrect 0')).toContain('taken out');
    expect(file()).toBe(before);
  });

  test('stays once it is on record', async () => {
    const corrected = twoHeads((front) =>
      front.replace(
        'status: published',
        'corrections:\n  - {date: 2026-05-03, what: a slip, was: one, now: two}\nstatus: published',
      ),
    );
    const record = {
      date: '2026-05-04',
      typed: null,
      narrative: null,
      data: [],
      corrections: 1,
      answers: [],
    };
    const { press, file, page } = open(corrected, {
      'ledger.json': JSON.stringify({
        version: 3,
        plans: [],
        dropped: [],
        reports: [{ slug: 'two-heads', records: [record] }],
      }),
    });
    expect(await page()).not.toContain('uncorrect');
    expect(await press('uncorrect 0')).toContain('on record');
    expect(file()).toBe(corrected);
  });

  test.each([
    [
      'of a draft',
      (front: string) => front.replace('published', 'draft'),
      correction,
      'This report is a draft',
    ],
    [
      'without words',
      (front: string) => front,
      { ...correction, 'answer.correction.was': ' ' },
      'Still empty: What stood there.',
    ],
    [
      'of a day to come',
      (front: string) => front,
      { ...correction, 'answer.correction.date': '2062-05-08' },
      'has not come yet',
    ],
    [
      'of no day',
      (front: string) => front,
      { ...correction, 'answer.correction.date': 'soon' },
      'a date as year-month-day',
    ],
  ] as const)(
    '%s is refused with a sentence, and what was typed stays',
    async (_name, change, typed, words) => {
      const { desk, page, file } = open(twoHeads((front) => change(front)));
      const before = file();
      const response = await desk.post(place, { do: 'correct', seen: seenIn(await page()), ...typed });
      const text = await response.text();
      expect(told(text)).toContain(words);
      expect(file()).toBe(before);
      const { document } = parseHTML(text);
      const what = document.querySelector('[name="answer.correction.what"]');
      if (!before.includes('status: draft'))
        expect(what?.getAttribute('value')).toBe(correction['answer.correction.what']);
    },
  );

  test('is not written over a file that was changed underneath', async () => {
    const { desk, page, root, file } = open();
    const seen = seenIn(await page());
    const elsewhere = twoHeads((front) => front.replace('Two heads', 'Two heads, changed elsewhere'));
    writeFileSync(join(root, 'reports/two-heads/report.md'), elsewhere);
    const text = await (await desk.post(place, { do: 'correct', seen, ...correction })).text();
    expect(told(text)).toContain('The file was changed meanwhile');
    expect(file()).toBe(elsewhere);
    expect(
      parseHTML(text).document.querySelector('[name="answer.correction.now"]')?.getAttribute('value'),
    ).toBe('9.5°, # and no less');
  });
});

describe('a reply', () => {
  const reply = {
    'answer.reply.from': 'the maker of "Alder": its technical office',
    'answer.reply.date': '2026-05-07',
    'answer.reply.text':
      'We thank the shop.\r\n\r\n- Our head: "no other".\r\n# {{ mean carry alder }} ---\r\n',
  };

  test('is kept to the letter, on one line of the file', async () => {
    const { press, file, root, page } = open();
    const before = file();
    expect(await press('reply', reply)).toContain('The reply is written down.');
    const { gone, come } = difference(before, file());
    expect(gone).toEqual([]);
    expect(come).toHaveLength(2);
    const [written] = frontIn(root).replies;
    expect(written).toEqual({
      from: 'the maker of "Alder": its technical office',
      date: '2026-05-07',
      text: 'We thank the shop.\n\n- Our head: "no other".\n# {{ mean carry alder }} ---',
    });
    expect(errorsIn(root)).toEqual([]);
    expect(noticeIn(root)).toBe('Reply from the maker of "Alder": its technical office, 7 May 2026.');
    const { document } = parseHTML(await page());
    expect(document.querySelector('#reply ~ form pre')?.textContent).toBe(written?.text);
  });

  test('can be taken out again', async () => {
    const { press, file } = open();
    const before = file();
    await press('reply', reply);
    await press('reply', { ...reply, 'answer.reply.from': 'somebody else' });
    await press('unreply 0');
    expect(file()).toContain('somebody else');
    expect(file()).not.toContain('technical office');
    await press('unreply 0');
    expect(file()).toBe(before);
  });
});

describe('a withdrawal', () => {
  const withdrawal = {
    'answer.withdrawal.date': '2026-05-09',
    'answer.withdrawal.reason': 'the shots were those of another ball: see "Two balls"',
    sure: 'yes',
  };

  test('sets the status, the day and the reason, and can be taken back', async () => {
    const { press, file, root } = open();
    const before = file();
    expect(await press('withdraw', withdrawal)).toContain('The report is withdrawn.');
    expect(difference(before, file())).toEqual({
      gone: ['status: published'],
      come: [
        'status: withdrawn',
        'withdrawn:',
        '  date: 2026-05-09',
        `  reason: 'the shots were those of another ball: see "Two balls"'`,
      ],
    });
    expect(errorsIn(root)).toEqual([]);
    expect(noticeIn(root)).toBe(
      'Withdrawn 9 May 2026. The shots were those of another ball: see "Two balls".',
    );
    expect(await press('unwithdraw')).toContain('published again');
    expect(file()).toBe(before);
  });

  test('is refused without a reason, and without a tick', async () => {
    const { press, file } = open();
    const before = file();
    expect(await press('withdraw', { ...withdrawal, 'answer.withdrawal.reason': '' })).toContain(
      'Still empty: Why the report was withdrawn.',
    );
    expect(await press('withdraw', { ...withdrawal, sure: '' })).toContain('tick “Yes, withdraw it”');
    expect(file()).toBe(before);
  });

  test('is not taken back while an error stands, and nothing is corrected meanwhile', async () => {
    const { press, file } = open(
      twoHeads((front) =>
        front
          .replace('status: published', 'status: withdrawn\nwithdrawn: {date: 2026-05-04, reason: a slip}')
          .replace('Six turns', '{{ mean nothing alder }} turns'),
      ),
    );
    const before = file();
    expect(await press('unwithdraw')).toContain('something stands in the way');
    expect(await press('correct', correction)).toContain('Publish it again first.');
    expect(file()).toBe(before);
  });
});

describe('a replacement', () => {
  test('is chosen among the other published reports, and can be taken back', async () => {
    const { press, file, root, page } = open(twoHeads(), {
      ...beside,
      'reports/draft/report.md': newer((front) => front.replace('status: published', 'status: draft')),
      'reports/draft/shots.csv': newerCsv.replaceAll('226.1', '226.2'),
    });
    const { document } = parseHTML(await page());
    const offered = [...document.querySelectorAll('#answer-replacement .choice')].map(({ textContent }) =>
      textContent.trim(),
    );
    expect(offered).toEqual(['Two heads, a year on, 2 May 2026']);
    const before = file();
    expect(await press('replace', { 'answer.replacement': 'newer' })).toContain('The report is replaced');
    expect(difference(before, file())).toEqual({
      gone: ['status: published'],
      come: ['status: superseded', 'superseded_by: newer'],
    });
    expect(errorsIn(root)).toEqual([]);
    expect(noticeIn(root)).toBe('Replaced by a newer report: Two heads, a year on');
    expect(await press('unreplace')).toContain('published again');
    expect(file()).toBe(before);
  });

  test('is none where no other is published', async () => {
    const { page, press, file } = open();
    const before = file();
    expect(await page()).toContain('There is no other published report');
    expect(await press('replace', { 'answer.replacement': 'two-heads' })).toContain('choose the report');
    expect(file()).toBe(before);
  });

  test('by a report whose name cannot be written there is refused with what is wrong', async () => {
    const { press, file } = open(twoHeads(), {
      'reports/Newer_one/report.md': newer(),
      'reports/Newer_one/shots.csv': newerCsv,
    });
    const before = file();
    expect(await press('replace', { 'answer.replacement': 'Newer_one' })).toContain('an id of small letters');
    expect(file()).toBe(before);
  });

  test('that is not there is told at its form', async () => {
    const { page } = open(
      twoHeads((front) => front.replace('status: published', 'status: superseded\nsuperseded_by: nowhere')),
      beside,
    );
    const { document } = parseHTML(await page());
    expect(document.querySelector('#replace ~ .field .error')?.textContent).toContain(
      'nowhere, which is no report',
    );
  });
});

describe('older addresses', () => {
  test.each(['old-heads', ' https://shop.example/tests/reports/old-heads/kit/?x#y ', '/reports/old-heads/'])(
    'are taken from what was pasted: %s',
    async (typed) => {
      const { press, file, root } = open();
      const before = file();
      expect(await press('alias', { 'answer.older-address': typed })).toContain('leads here');
      expect(difference(before, file())).toEqual({ gone: [], come: ['aliases: [old-heads]'] });
      expect(errorsIn(root)).toEqual([]);
      expect(await press('unalias 0')).toContain('taken out');
      expect(file()).toBe(before);
    },
  );

  test.each(['', 'two heads', '../outside', 'index.html', 'two-heads', 'newer', '%E0%A4%A'])(
    'that cannot be one are refused: %s',
    async (typed) => {
      const { press, file } = open(twoHeads(), beside);
      const before = file();
      expect(await press('alias', { 'answer.older-address': typed })).toContain('Nothing was written');
      expect(file()).toBe(before);
    },
  );
});

describe('the page of what comes after', () => {
  test('of a draft says that it is for later, and has no form for readers', async () => {
    const { page } = open(twoHeads((front) => front.replace('status: published', 'status: draft')));
    const { document } = parseHTML(await page());
    expect(told(await page())).toContain('This report is a draft');
    expect(document.querySelectorAll('[value=correct], [value=withdraw], [value=reply]')).toHaveLength(0);
    expect([...document.querySelectorAll('h2')].map(({ textContent }) => textContent)).toEqual([
      'Correct',
      'Print a reply',
      'Withdraw',
      'Replace',
      'Its addresses',
    ]);
  });

  test('markup in every field is text', async () => {
    const markup = `"><img src=x onerror=alert(1)>'&lt;`;
    const { desk, press, page } = open(twoHeads(), beside);
    const day = '2026-05-09';
    const forms: readonly Readonly<Record<string, string>>[] = [
      {
        do: 'correct',
        'answer.correction.date': day,
        'answer.correction.what': markup,
        'answer.correction.was': markup,
        'answer.correction.now': markup,
      },
      { do: 'reply', 'answer.reply.date': day, 'answer.reply.from': markup, 'answer.reply.text': markup },
      { do: 'replace', 'answer.replacement': markup },
      { do: 'alias', 'answer.older-address': markup },
      { do: markup },
      { do: 'withdraw', 'answer.withdrawal.date': day, 'answer.withdrawal.reason': markup, sure: 'yes' },
      { do: 'withdraw', 'answer.withdrawal.date': markup, 'answer.withdrawal.reason': markup, sure: markup },
    ];
    for (const form of forms) {
      const response = await desk.post(place, { seen: seenIn(await page()), ...form });
      for (const text of [await response.text(), await page()]) {
        expect(parseHTML(text).document.querySelectorAll('img')).toHaveLength(0);
        expect(text).not.toContain('<img');
      }
    }
    expect(await page()).toContain('Withdrawn 9 May 2026.');
    expect(await press('constructor')).toContain('no such button');
  });

  test('is one of the ways from the answers of a report', async () => {
    const { desk, root } = open();
    const { document } = parseHTML(await (await desk.get('/desk/reports/two-heads/')).text());
    expect(document.querySelector(`.parts a[href="${place}"]`)?.textContent).toBe('After publication');
    expect(reportAtDesk(root, 'two-heads')?.others()).toEqual([]);
  });
});
