import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { recordAtDesk } from '../../src/commands/desk/recordAtDesk.ts';
import { renameReport } from '../../src/commands/desk/renameReport.ts';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { sha256 } from '../../src/site/contentFiles.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { failingDisk, Killed, type Failure } from '../commands/failingDisk.ts';
import { leftovers } from '../commands/writingScenarios.ts';
import { atDesk, seenIn } from './atDesk.ts';

const place = '/desk/reports/two-heads/';

function open(report: string = twoHeads(), more: Readonly<Record<string, string>> = {}) {
  const root = contentFolder({
    'shop.yaml': shop,
    'reports/two-heads/report.md': report,
    'reports/two-heads/shots.csv': twoHeadsCsv,
    ...more,
  });
  const desk = atDesk(root);
  return {
    root,
    desk,
    read: (slug: string) => readFileSync(join(root, 'reports', slug, 'report.md'), 'utf8'),
    move: async (to: string, from = place) => {
      const seen = seenIn(await (await desk.get(`${from}after/`)).text());
      return desk.post(`${from}address/`, { seen, 'answer.new-address': to });
    },
  };
}

const problemsIn = (root: string): readonly string[] => checkedSite(root).problems.map(({ kind }) => kind);

const main = (page: string): string =>
  parseHTML(page).document.querySelector('main')?.textContent.replace(/\s+/g, ' ').trim() ?? '';

describe('another address for a report', () => {
  test('is a folder of another name, and the older address leads to it', async () => {
    const { root, move, read, desk } = open();
    const response = await move('https://shop.example/reports/new-name/');
    expect([response.status, response.headers.get('location')]).toEqual([
      303,
      '/desk/reports/new-name/after/?done=renamed',
    ]);
    expect(readdirSync(join(root, 'reports'))).toEqual(['new-name']);
    expect(readFileSync(join(root, 'reports/new-name/shots.csv'), 'utf8')).toBe(twoHeadsCsv);
    expect(read('new-name')).toBe(
      twoHeads((front) => front.replace('status: published\n', 'status: published\naliases: [two-heads]\n')),
    );
    expect(problemsIn(root)).toEqual([]);
    expect(main(await (await desk.get('/desk/reports/new-name/after/?done=renamed')).text())).toContain(
      'The report has a new address.',
    );
  });

  test('can be the one before again', async () => {
    const { root, move, read } = open();
    await move('new-name');
    await move('two-heads', '/desk/reports/new-name/');
    expect(readdirSync(join(root, 'reports'))).toEqual(['two-heads']);
    expect(read('two-heads')).toContain('aliases: [new-name]\n');
    expect(problemsIn(root)).toEqual([]);
  });

  test('keeps what is on record, and those that it replaces lead to it', async () => {
    const { root, move, read } = open(twoHeads(), {
      'reports/older/report.md': twoHeads((front) =>
        front
          .replace('title: Two heads', 'title: Two heads, first')
          .replace('status: published', 'status: superseded\nsuperseded_by: two-heads # made anew'),
      ),
      'reports/older/shots.csv': twoHeadsCsv.replaceAll('231.2', '232.2'),
    });
    const time = { today: '2026-05-09', time: '10:00' };
    const { recorded, said } = recordAtDesk({ contentDir: root, outDir: join(root, 'none'), ...time });
    expect([recorded, said]).toEqual([true, expect.stringContaining('two-heads')]);
    await move('new-name');
    expect(read('older')).toContain('superseded_by: new-name # made anew\n');
    expect(problemsIn(root)).toEqual([]);
    // Without its older name the record would be of a report that is gone.
    const file = join(root, 'reports/new-name/report.md');
    writeFileSync(file, readFileSync(file, 'utf8').replace('aliases: [two-heads]\n', ''));
    expect(problemsIn(root)).toContain('published-report-gone');
  });

  test('of a draft that nobody knows leaves no trace', async () => {
    const draft = twoHeads((front) => front.replace('status: published', 'status: draft'));
    const { move, read } = open(draft);
    await move('new-name');
    expect(read('new-name')).toBe(draft);
  });

  test.each([
    ['', 'small letters'],
    ['../outside', 'small letters'],
    ['New Name', 'small letters'],
    ['two-heads', 'the address that it has'],
    ['taken', 'the address of Taken'],
    ['once', 'an older address of Taken'],
    ['broken', 'the address of broken'],
    ['loose', 'there is a report at loose already'],
  ])('is refused where it cannot be, or is taken: %s', async (to, words) => {
    const { root, move, read } = open(twoHeads(), {
      'reports/Taken/report.md': twoHeads((front) => front.replace('session:', 'aliases: [Once]\nsession:')),
      'reports/Taken/shots.csv': twoHeadsCsv,
      'reports/broken/report.md': 'nothing',
      'reports/loose': 'a file',
    });
    const response = await move(to);
    expect(main(await response.text())).toContain(words);
    expect(readdirSync(join(root, 'reports')).toSorted()).toEqual(['Taken', 'broken', 'loose', 'two-heads']);
    expect(read('two-heads')).toBe(twoHeads());
  });

  test('is not given to a file that was changed underneath', async () => {
    const { root, desk, read } = open();
    const seen = seenIn(await (await desk.get(`${place}after/`)).text());
    const elsewhere = twoHeads((front) => front.replace('varied: head', 'varied: clubhead'));
    writeFileSync(join(root, 'reports/two-heads/report.md'), elsewhere);
    const response = await desk.post(`${place}address/`, { seen, 'answer.new-address': 'new-name' });
    expect(main(await response.text())).toContain('The file was changed meanwhile');
    expect(read('two-heads')).toBe(elsewhere);
  });

  test('needs the token of the desk', async () => {
    const { root, desk } = open();
    const seen = seenIn(await (await desk.get(`${place}after/`)).text());
    const form = { seen, token: 'another', 'answer.new-address': 'new-name' };
    expect((await desk.post(`${place}address/`, form)).status).toBe(403);
    expect(readdirSync(join(root, 'reports'))).toEqual(['two-heads']);
  });
});

describe.each(['killed', 'full', 'faulty'] as const)('a disk that is %s at any step', (failure: Failure) => {
  test('leaves one whole report', () => {
    const text = twoHeads((front) => front.replace('status:', 'aliases: [two-heads]\nstatus:'));
    const seen = sha256(Buffer.from(twoHeads()));
    let writes = 0;
    for (let from = 1; from < 40; from += 1) {
      const { root, read } = open();
      const { disk, steps } = failingDisk(from, failure);
      let written = false;
      try {
        written =
          renameReport({ contentDir: root, slug: 'two-heads', to: 'new-name', text, seen, disk }).kind ===
          'written';
      } catch (error) {
        expect(error).toBeInstanceOf(Killed);
      }
      const names = readdirSync(join(root, 'reports')).filter((name) => !name.startsWith('.'));
      expect(names).toHaveLength(1);
      const [name = ''] = names;
      expect(readFileSync(join(root, 'reports', name, 'shots.csv'), 'utf8')).toBe(twoHeadsCsv);
      expect([twoHeads(), text]).toContain(read(name));
      // Whenever it ends, the address that readers have is not lost.
      if (name === 'new-name') expect(read(name)).toBe(text);
      if (written) expect([name, read(name)]).toEqual(['new-name', text]);
      else if (failure !== 'killed') expect([name, read(name)]).toEqual(['two-heads', twoHeads()]);
      if (written) writes += 1;
      else if (failure !== 'killed') expect(leftovers(root)).toEqual([]);
      if (steps() < from) break;
    }
    expect(writes).toBeGreaterThan(0);
  });
});

test('a renaming that was broken off is said, and done by asking again', async () => {
  const brokenOff = twoHeads((front) => front.replace('status:', 'aliases: [two-heads]\nstatus:'));
  const { root, move, read } = open(brokenOff);
  expect(problemsIn(root)).toContain('alias-taken');
  await move('new-name');
  expect(readdirSync(join(root, 'reports'))).toEqual(['new-name']);
  expect(read('new-name')).toBe(brokenOff);
  expect(problemsIn(root)).toEqual([]);
});

describe('what is put on record at the desk', () => {
  test('is told as the command tells it', async () => {
    const { root } = open();
    const desk = atDesk(root, {
      record: () => ({ recorded: false, said: 'reports/<b>two-heads</b>: an error' }),
    });
    const page = await (await desk.post('/desk/record/', {})).text();
    expect(main(page)).toContain('Not everything could be put on record.');
    expect(parseHTML(page).document.querySelectorAll('b')).toHaveLength(0);
    const done = await (await atDesk(root).post('/desk/record/', {})).text();
    expect(main(done)).toContain('Put on record.');
  });

  test('writes the ledger of the content folder', () => {
    const { root } = open();
    mkdirSync(join(root, 'site'));
    const { recorded } = recordAtDesk({
      contentDir: root,
      outDir: join(root, 'site'),
      today: '2026-05-09',
      time: '10:00',
    });
    expect(recorded).toBe(true);
    expect(existsSync(join(root, 'ledger.json'))).toBe(true);
    expect(leftovers(root)).toEqual([]);
  });

  test('is what a changed report asks for, in words of the desk', async () => {
    const { root, desk } = open();
    recordAtDesk({ contentDir: root, outDir: join(root, 'none'), today: '2026-05-09', time: '10:00' });
    writeFileSync(
      join(root, 'reports/two-heads/report.md'),
      twoHeads((front) => front.replace('varied: head', 'varied: clubhead')).replace(
        'Six turns',
        'Six rounds',
      ),
    );
    for (const path of [place, `${place}after/`]) {
      const said = main(await (await desk.get(path)).text());
      expect(said).toContain('Say under “After publication” what was corrected, then put it on record');
      expect(said).toContain('if only the wording was mended, put it on record');
      expect(said).not.toContain('npm run');
    }
  });
});
