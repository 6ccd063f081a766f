import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { draftCommand } from '../../src/commands/draft/draftCommand.ts';
import { contentFolder, shop, twoHeadsCsv } from './contentFolder.ts';
import { listen } from './listen.ts';

type Typed = Parameters<typeof draftCommand>[0];

function draft(
  contentDir: string,
  more: Partial<Typed> = {},
): { readonly status: number; readonly said: string } {
  const { terminal, said } = listen();
  const status = draftCommand({
    ...{ contentDir, paths: [], slug: null, dryRun: false, json: false, terminal },
    ...more,
  });
  return { status, said: said() };
}

describe('what was typed', () => {
  test.each<[string, Partial<Typed>]>([
    ['--slug', { slug: 'balls' }],
    ['--warm-ups', { warmUps: '3' }],
    ['--dry-run', { dryRun: true }],
    ['--json', { json: true }],
  ])('%s without a file is refused', (_option, more) => {
    expect(draft(contentFolder({ 'inbox/two.csv': twoHeadsCsv }), more)).toEqual({
      status: 1,
      said: '--slug, --warm-ups, --dry-run and --json go with the name of a file. Nothing was written.\n',
    });
  });

  test('warm-up swings are a number', () => {
    expect(draft(contentFolder({}), { warmUps: 'ten' })).toEqual({
      status: 1,
      said: '--warm-ups ten: a whole number up to 99. Nothing was written.\n',
    });
  });

  test.each([
    ['Two Heads', ', such as two-heads'],
    ['!', ''],
  ])('a name that is none is refused, with one that would do: %s', (slug, suggested) => {
    expect(draft(contentFolder({}), { slug, paths: ['two.csv'] })).toEqual({
      status: 1,
      said: `--slug ${slug}: use small letters, digits and single hyphens, 40 characters at most${suggested}. Nothing was written.\n`,
    });
  });
});

describe('the inbox', () => {
  test('that holds no session says what to do', () => {
    const content = contentFolder({ 'shop.yaml': shop });
    expect(draft(content)).toEqual({
      status: 0,
      said: `No CSV file waits in ${content}/inbox. Put one there, or name one: npm run draft -- FILE.csv\n`,
    });
  });

  test('cannot be in a file', () => {
    const content = join(contentFolder({}), 'content');
    writeFileSync(content, 'a file');
    expect(draft(content)).toEqual({
      status: 1,
      said: `${content} is a file, and content is kept in a folder. Nothing was written.\n`,
    });
  });

  test('keeps what cannot be drafted, and says so last', () => {
    const content = contentFolder({
      'shop.yaml': shop,
      'inbox/empty.csv': '',
      'inbox/photo.pdf': 'no session',
      'inbox/two.csv': twoHeadsCsv,
    });
    const { status, said } = draft(content);
    expect(status).toBe(1);
    expect(said).toMatch(/\nStill in the inbox: .*empty\.csv\n$/);
    expect(said).toMatch(/photo\.pdf is .*, and was left there\. /);
    expect(readdirSync(join(content, 'inbox')).sort()).toEqual(['empty.csv', 'photo.pdf']);
  });
});
