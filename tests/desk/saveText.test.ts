import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { saveText } from '../../src/commands/desk/saveText.ts';
import { sha256 } from '../../src/site/contentFiles.ts';
import { contentFolder, shop } from '../commands/contentFolder.ts';
import { failingDisk, Killed, type Failure } from '../commands/failingDisk.ts';
import { leftovers } from '../commands/writingScenarios.ts';

const before = shop;
const after = 'name: Another Workshop\n';
const seen = sha256(Buffer.from(before));
const save = { file: 'shop.yaml', text: after, seen };

describe('a text that is saved', () => {
  test('takes the place of the one that was seen', () => {
    const contentDir = contentFolder({ 'shop.yaml': before });
    expect(saveText({ contentDir, ...save })).toEqual({ kind: 'written' });
    expect(readFileSync(join(contentDir, 'shop.yaml'), 'utf8')).toBe(after);
    expect(leftovers(contentDir)).toEqual([]);
  });

  test.each([
    ['another one', 'name: Somebody else\n', seen],
    ['one where none was seen', before, null],
    ['none where one was seen', null, seen],
  ])('does not take the place of %s', (_name, there, hash) => {
    const contentDir = contentFolder(there === null ? {} : { 'shop.yaml': there });
    expect(saveText({ contentDir, ...save, seen: hash })).toEqual({ kind: 'changed' });
    if (there !== null) expect(readFileSync(join(contentDir, 'shop.yaml'), 'utf8')).toBe(there);
  });

  test('is a new file where there was none', () => {
    const contentDir = contentFolder({});
    expect(saveText({ contentDir, ...save, seen: null })).toEqual({ kind: 'written' });
    expect(readFileSync(join(contentDir, 'shop.yaml'), 'utf8')).toBe(after);
  });

  test('is not written where nobody could read it again', () => {
    const contentDir = contentFolder({ 'shop.yaml': before });
    const saved = saveText({ contentDir, ...save, text: `name: ${'x'.repeat(2_500_000)}\n` });
    expect(saved).toEqual({
      kind: 'refused',
      why: 'Nothing was written: that is 2.5 MB of text, and 2.0 MB are read at most. Take out what is no answer; notes go into a file of their own.',
    });
    expect(readFileSync(join(contentDir, 'shop.yaml'), 'utf8')).toBe(before);
  });

  test('follows no link out of the content folder', () => {
    const outside = contentFolder({ 'secret.md': before });
    const contentDir = contentFolder({});
    mkdirSync(join(contentDir, 'reports/linked'), { recursive: true });
    symlinkSync(join(outside, 'secret.md'), join(contentDir, 'reports/linked/report.md'));
    for (const file of ['reports/linked/report.md', '../secret.md', join('..', outside, 'secret.md')])
      expect(saveText({ contentDir, ...save, file })).toEqual({ kind: 'changed' });
    expect(readFileSync(join(outside, 'secret.md'), 'utf8')).toBe(before);
  });

  test.each<Failure>(['killed', 'full', 'faulty'])(
    'is there whole or not at all, %s at each step',
    (failure) => {
      const counted = failingDisk(Infinity, failure);
      saveText({ contentDir: contentFolder({ 'shop.yaml': before }), ...save, disk: counted.disk });
      expect(counted.steps()).toBeGreaterThan(10);
      for (let step = 1; step <= counted.steps(); step += 1) {
        const contentDir = contentFolder({ 'shop.yaml': before });
        const { disk } = failingDisk(step, failure);
        try {
          const { kind } = saveText({ contentDir, ...save, disk });
          expect(failure).not.toBe('killed');
          if (kind === 'refused') expect(leftovers(contentDir)).toEqual([]);
        } catch (error) {
          if (!(error instanceof Killed)) throw error;
        }
        const now = readFileSync(join(contentDir, 'shop.yaml'), 'utf8');
        expect([before, after], `${failure} at step ${step}`).toContain(now);
        // Whoever saves next finds the way free.
        const again = saveText({ contentDir, ...save, seen: sha256(Buffer.from(now)) });
        expect(again).toEqual({ kind: 'written' });
        expect(leftovers(contentDir)).toEqual([]);
      }
    },
  );

  test('says in words what the disk says', () => {
    const contentDir = contentFolder({ 'shop.yaml': before });
    const { disk } = failingDisk(1, 'full');
    const saved = saveText({ contentDir, ...save, disk });
    expect(saved).toMatchObject({ kind: 'refused' });
    expect('why' in saved ? saved.why : '').toMatch(/ENOSPC.*Nothing was written\.$/);
    writeFileSync(join(contentDir, 'shop.yaml'), before);
  });
});
