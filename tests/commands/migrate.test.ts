import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { migrateCommand } from '../../src/commands/migrate/migrateCommand.ts';
import { migrations, type Migration } from '../../src/commands/migrate/migrations.ts';
import { lockName } from '../../src/commands/writing/ownNames.ts';
import { contentVersion } from '../../src/intake/authored/shop.ts';
import { version } from '../../src/site/version.ts';
import { contentFolder, twoHeads, twoHeadsCsv } from './contentFolder.ts';
import { failingDisk, Killed, type Failure } from './failingDisk.ts';
import { listen } from './listen.ts';
import { filesIn, leftovers } from './writingScenarios.ts';

function migrate(contentDir: string, more: Partial<Parameters<typeof migrateCommand>[0]> = {}) {
  const { terminal, said } = listen();
  const status = migrateCommand({ contentDir, dryRun: false, terminal, ...more });
  return { status, said: said() };
}

/** Invented: a second version calls the question `asked`, and a third one has no `contact`. */
const invented: readonly Migration[] = [
  {
    from: 1,
    edits: (kind, { question }) =>
      kind !== 'report' || typeof question !== 'string'
        ? []
        : [
            { path: ['asked'], to: question, after: 'question' },
            { path: ['question'], to: null },
          ],
  },
  {
    from: 2,
    edits: (kind, { contact }) =>
      kind === 'shop' && contact !== undefined ? [{ path: ['contact'], to: null }] : [],
  },
];
const toThree = { to: 3, steps: invented };

const shop =
  '# Who we are\r\nschema:   1 # as of today\r\nname:  Example Golf Workshop\r\ncontact: a@golf.example\r\n';
const sheet = "label:   Alder   # ours\nsupplied_by: 'our stock'\nsold_here: new\n";
const files = {
  'shop.yaml': shop,
  'contenders/alder.yaml': sheet,
  'reports/one/report.md': `\ufeff${twoHeads()}`,
  'reports/one/shots.csv': twoHeadsCsv,
  'reports/empty/notes.txt': 'nothing yet',
};

describe('the table of migrations', () => {
  test('has one step for each version that there was before this one', () => {
    expect(migrations.map(({ from }) => from)).toEqual(
      Array.from({ length: contentVersion - 1 }, (_, index) => index + 1),
    );
  });

  // The first real migration changes this, and is then tested by its own edits.
  test('is empty while content has had one version only', () => {
    expect([contentVersion, migrations]).toEqual([1, []]);
  });
});

describe('content of this version', () => {
  test.each([
    ['that says so', shop],
    ['that says nothing of it', 'name: Example Golf Workshop\n'],
    ['that leaves the answer open', 'schema:\nname: Example Golf Workshop\n'],
  ])('%s has nothing to be done', (_, text) => {
    const content = contentFolder({ ...files, 'shop.yaml': text });
    const before = filesIn(content);
    expect(migrate(content)).toEqual({
      status: 0,
      said: 'The content is of version 1, which this Straightface reads: nothing is to be done.\n',
    });
    expect(filesIn(content)).toEqual(before);
  });
});

describe('content of an earlier version', () => {
  const content = contentFolder(files);
  const run = migrate(content, toThree);

  test('is brought along, and every file that changed is told', () => {
    expect(run).toEqual({
      status: 0,
      said:
        'reports/one/report.md was changed.\nshop.yaml was changed.\n' +
        'Look it over (git diff shows what changed), then run npm run check.\n',
    });
  });

  test('keeps every byte that no migration edits', () => {
    const asked = 'Does the new head carry farther than the old one?';
    expect(filesIn(content)).toEqual({
      ...filesIn(contentFolder(files)),
      'shop.yaml': '# Who we are\r\nschema:   3 # as of today\r\nname:  Example Golf Workshop\r\n',
      'reports/one/report.md': Buffer.from(
        `\ufeff${twoHeads().replace(`question: ${asked}`, `asked: '${asked}'`)}`,
      ).toString('latin1'),
    });
  });

  test('has nothing more to be done then', () => {
    expect(migrate(content, toThree).said).toBe(
      'The content is of version 3, which this Straightface reads: nothing is to be done.\n',
    );
  });

  test('goes on where a migration was stopped before the version was written', () => {
    const stopped = contentFolder(files);
    migrate(stopped, toThree);
    const whole = filesIn(stopped);
    writeFileSync(join(stopped, 'shop.yaml'), shop);
    expect(migrate(stopped, toThree)).toMatchObject({ status: 0 });
    expect(filesIn(stopped)).toEqual(whole);
  });

  test('is only looked at by a dry run', () => {
    const untouched = contentFolder(files);
    const before = filesIn(untouched);
    expect(migrate(untouched, { ...toThree, dryRun: true })).toEqual({
      status: 0,
      said: 'reports/one/report.md would be changed.\nshop.yaml would be changed.\n',
    });
    expect(filesIn(untouched)).toEqual(before);
  });

  test('that is not UTF-8 keeps every letter, is UTF-8 then, and that is said', () => {
    const old = contentFolder(files);
    const report = join(old, 'reports/one/report.md');
    writeFileSync(report, Buffer.from(twoHeads().replace('Six', 'Zwölf'), 'latin1'));
    expect(migrate(old, toThree).said).toContain(
      'reports/one/report.md was changed. It was saved as Windows-1252 and is UTF-8 now.\n',
    );
    expect(readFileSync(report, 'utf8')).toContain('Zwölf');
  });

  test('takes the steps from its own version on', () => {
    const second = contentFolder({ ...files, 'shop.yaml': shop.replace('  1', '  2') });
    expect(migrate(second, toThree).said).toMatch(/^shop\.yaml was changed\.\n/);
    expect(readFileSync(join(second, 'reports/one/report.md'), 'utf8')).toContain('\nquestion: ');
  });
});

test.each<Failure>(['killed', 'full'])(
  '%s at any step, content is brought along by the next run',
  (failure) => {
    const whole = contentFolder(files);
    const counted = failingDisk(Infinity, failure);
    migrate(whole, { ...toThree, disk: counted.disk });
    for (let step = 1; step <= counted.steps(); step += 1) {
      const content = contentFolder(files);
      const before = filesIn(content);
      try {
        migrate(content, { ...toThree, disk: failingDisk(step, failure).disk });
      } catch (error) {
        if (!(error instanceof Killed)) throw error;
      }
      const now = filesIn(content);
      // Whoever looks meanwhile sees each file as it was or as it is to be.
      for (const [path, text] of Object.entries(filesIn(whole)))
        expect([before[path], text], `${path} at step ${step}`).toContain(now[path]);
      expect(migrate(content, toThree).status).toBe(0);
      expect(filesIn(content)).toEqual(filesIn(whole));
      // Killed with nothing left to write, it leaves its lock to the next command that writes.
      expect(leftovers(content).filter((path) => path !== lockName)).toEqual([]);
    }
    expect(counted.steps()).toBeGreaterThan(15);
  },
);

describe('nothing is written, and it is said why,', () => {
  const refused = (text: Readonly<Record<string, string>>, more = {}) => {
    const content = contentFolder({ ...files, ...text });
    const before = filesIn(content);
    const run = migrate(content, more);
    expect(filesIn(content)).toEqual(before);
    expect(run.status).toBe(1);
    return run.said;
  };

  test('where the content is of a later version', () => {
    expect(refused({ 'shop.yaml': 'schema: 2\nname: x\n' })).toBe(
      `shop.yaml says schema: 2, and Straightface ${version} reads 1. Take a newer one: npm install with the newer package, or in a checkout of it git pull and npm ci. Its CHANGELOG.md says from which version on.\nNothing was written.\n`,
    );
  });

  test('where the version is none', () => {
    expect(refused({ 'shop.yaml': 'schema: new\nname: x\n' })).toBe(
      'shop.yaml says schema: new, which is no version: write schema: 1.\nNothing was written.\n',
    );
  });

  test('where the file of the shop cannot be read', () => {
    expect(refused({ 'shop.yaml': 'name: "x\n' })).toBe(
      'shop.yaml cannot be read: mend what npm run check reports first.\nNothing was written.\n',
    );
  });

  test('where files cannot be edited: all of them are told', () => {
    const said = refused(
      { 'reports/one/report.md': 'no answers', 'contenders/alder.yaml': 'label: "x\n' },
      toThree,
    );
    expect(said).toBe(
      'contenders/alder.yaml: Its answers cannot be read as they stand. Mend what npm run check reports first.\n' +
        'reports/one/report.md: Its answers cannot be read as they stand. Mend what npm run check reports first.\n' +
        'Nothing was written.\n',
    );
  });

  test('where there is no file that states the version', () => {
    const content = contentFolder({ 'reports/one/report.md': twoHeads() });
    expect(migrate(content, toThree)).toEqual({
      status: 1,
      said: 'shop.yaml: It is not there, and it states the version. Write it with a line schema: 1.\nNothing was written.\n',
    });
  });

  test('where there is no content', () => {
    const nowhere = join(contentFolder({}), 'nowhere');
    expect(migrate(nowhere)).toEqual({
      status: 1,
      said: `There is no folder ${nowhere}.\nNothing was written.\n`,
    });
  });
});
