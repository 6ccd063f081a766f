import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { saveText } from '../../src/commands/desk/saveText.ts';
import { draftCommand } from '../../src/commands/draft/draftCommand.ts';
import { planCommand } from '../../src/commands/plan/planCommand.ts';
import { realDisk } from '../../src/commands/writing/disk.ts';
import { writeEditorSchemas } from '../../src/commands/writing/editorSchemas.ts';
import { editorSchema, editorSchemaNames } from '../../src/intake/authored/editorSchema.ts';
import { contentFolder, shop, twoHeadsCsv } from './contentFolder.ts';
import { failingDisk } from './failingDisk.ts';
import { listen } from './listen.ts';

const schemaAt = (content: string, name = 'report'): string => join(content, '.schema', `${name}.json`);

function draft(content: string, dryRun = false): { readonly status: number; readonly said: string } {
  const { terminal, said } = listen();
  const session = join(contentFolder({ 'two-heads.csv': twoHeadsCsv }), 'two-heads.csv');
  const typed = { contentDir: content, paths: [session], slug: null, dryRun, json: false, terminal };
  return { status: draftCommand(typed), said: said() };
}

/** Where the first line of a file says that its schema stands. */
function schemaNamedBy(file: string): string | undefined {
  const text = readFileSync(file, 'utf8').replace(/^---\n/, '');
  const named = /^# yaml-language-server: \$schema=(\S+)\n/.exec(text)?.[1];
  return named === undefined ? undefined : resolve(dirname(file), named);
}

describe('the schemas beside content', () => {
  test('are written with a draft, whose first line leads there, and are no content', () => {
    const content = contentFolder({ 'shop.yaml': shop });
    expect(draft(content).status).toBe(0);
    for (const name of editorSchemaNames)
      expect(readFileSync(schemaAt(content, name), 'utf8')).toBe(editorSchema(name));
    expect(schemaNamedBy(join(content, 'reports/two-heads/report.md'))).toBe(schemaAt(content));
    const { problems } = checkedSite(content);
    expect(problems.filter(({ file }) => file.includes('.schema'))).toEqual([]);
    expect(readdirSync(join(content, '.schema')).sort()).toEqual([
      'contender.json',
      'report.json',
      'shop.json',
    ]);
  });

  test('are not written by --dry-run', () => {
    const content = contentFolder({ 'shop.yaml': shop });
    expect(draft(content, true).status).toBe(0);
    expect(readdirSync(content)).toEqual(['shop.yaml']);
  });

  test('are written with a plan, whose draft leads there', async () => {
    const content = contentFolder({ 'shop.yaml': shop });
    const { terminal } = listen();
    const options = {
      ...{ contender: ['Alder', 'Birch'], varied: 'head', club: 'driver', hitter: 'staff fitter' },
      ...{ shots: '12', slug: 'first' },
    };
    const times = { today: '2026-05-01', time: '09:00' };
    expect(await planCommand({ contentDir: content, options, asker: null, ...times, terminal })).toBe(0);
    expect(schemaNamedBy(join(content, 'reports/first/report.md'))).toBe(schemaAt(content));
    expect(existsSync(schemaAt(content))).toBe(true);
  });

  test('are written when the desk saves shop.yaml, and with no other file', () => {
    const content = contentFolder({ 'notes.txt': 'x' });
    expect(saveText({ contentDir: content, file: 'other.yaml', text: 'a: b\n', seen: null }).kind).toBe(
      'written',
    );
    expect(existsSync(schemaAt(content, 'shop'))).toBe(false);
    expect(saveText({ contentDir: content, file: 'shop.yaml', text: shop, seen: null }).kind).toBe('written');
    expect(existsSync(schemaAt(content, 'shop'))).toBe(true);
  });

  test('stay untouched while they are right, and follow another version', () => {
    const content = contentFolder({});
    writeEditorSchemas(content, realDisk);
    utimesSync(schemaAt(content), 1_000_000, 1_000_000);
    writeFileSync(schemaAt(content, 'shop'), editorSchema('shop').replace('"name"', '"nom"'));
    writeEditorSchemas(content, realDisk);
    expect(statSync(schemaAt(content)).mtimeMs).toBe(1_000_000_000);
    expect(readFileSync(schemaAt(content, 'shop'), 'utf8')).toBe(editorSchema('shop'));
  });

  test('leave alone what somebody made by hand, and links', () => {
    const content = contentFolder({ '.schema/report.json': '{"title": "mine"}' });
    const elsewhere = join(contentFolder({ 'shop.json': editorSchema('shop').replace('"name"', '"nom"') }));
    symlinkSync(join(elsewhere, 'shop.json'), schemaAt(content, 'shop'));
    const before = readFileSync(join(elsewhere, 'shop.json'), 'utf8');
    writeEditorSchemas(content, realDisk);
    expect(readFileSync(schemaAt(content), 'utf8')).toBe('{"title": "mine"}');
    expect(readFileSync(join(elsewhere, 'shop.json'), 'utf8')).toBe(before);
    expect(existsSync(schemaAt(content, 'contender'))).toBe(true);
    const linked = contentFolder({});
    mkdirSync(join(elsewhere, 'away'));
    symlinkSync(join(elsewhere, 'away'), join(linked, '.schema'));
    writeEditorSchemas(linked, realDisk);
    expect(readdirSync(join(elsewhere, 'away'))).toEqual([]);
  });

  test('are a help and no more: a disk that refuses them leaves nothing half written', () => {
    const content = contentFolder({});
    const counted = failingDisk(Infinity, 'full');
    writeEditorSchemas(contentFolder({}), counted.disk);
    for (let step = 1; step <= counted.steps(); step += 3) {
      writeEditorSchemas(content, failingDisk(step, 'full').disk);
      const there = existsSync(join(content, '.schema')) ? readdirSync(join(content, '.schema')) : [];
      expect(there.filter((name) => !/^(report|shop|contender)\.json$/.test(name))).toEqual([]);
    }
  });
});
