import { readFileSync, readdirSync } from 'node:fs';
import { resolve } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseDocument } from 'yaml';
import { runsOf } from '../../everyday.ts';
import type { Answer } from '../../../src/intake/edits/answerEdit.ts';
import { editReport } from '../../../src/intake/edits/editAnswers.ts';
import { reportParts } from '../../../src/intake/edits/reportParts.ts';

const runs = runsOf(200);

/** Reports that were written by hand, and one with a comment at every second line. */
const reports = ['content/reports', 'tests/cases']
  .flatMap((folder) =>
    readdirSync(resolve(folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('report.md'))
      .map((name) => resolve(folder, name)),
  )
  .map((file) => readFileSync(file, 'utf8'));
const commented = reports.map((text) => {
  const parts = reportParts(text);
  if (parts === null) throw new Error(text);
  let count = 0;
  const answers = parts.answers.replaceAll(/^(?=[a-z_]+:)/gm, () => {
    count += 1;
    return count % 2 === 0 ? '' : `# Question ${count}: what it is; and "so"?\n`;
  });
  return parts.opening + answers + parts.closing + parts.narrative;
});
const all = [...reports, ...commented];

type Path = readonly (string | number)[];

function treeOf(text: string): Answer {
  const parts = reportParts(text);
  if (parts === null) throw new Error('The answers are gone.');
  return parseDocument(parts.answers, { schema: 'failsafe' }).toJS() as Answer;
}

function pathsIn(answer: Answer, above: Path = []): readonly Path[] {
  if (typeof answer === 'string') return [above];
  const inner = Array.isArray(answer)
    ? answer.flatMap((entry: Answer, at) => pathsIn(entry, [...above, at]))
    : Object.entries(answer).flatMap(([key, value]) => pathsIn(value, [...above, key]));
  return above.length === 0 ? inner : [above, ...inner];
}

function valueAt(answer: Answer, path: Path): unknown {
  return path.reduce<unknown>(
    (here, step) => (typeof here === 'object' && here !== null ? Reflect.get(here, step) : undefined),
    answer,
  );
}

const typed = fc.oneof(
  fc.constantFrom(
    '2026-04-01',
    'yes',
    "Dave's: the #1 {best}",
    '- dash',
    '9°',
    '@',
    '"',
    "'",
    'a\nb',
    '',
    '0x1F',
    '&a',
    '*b',
    '!t',
    '%',
    '`',
  ),
  fc.string({ maxLength: 30, unit: 'grapheme-ascii' }).map((text) => text.trim()),
);

const lineWith = (text: string): readonly string[] => text.split('\n').filter((line) => line.includes('#'));

test('answers, each typed into a file written by hand: it says so, and every other line stays', () => {
  let edited = 0;
  fc.assert(
    fc.property(fc.nat(all.length - 1), fc.nat(), typed, (which, place, to) => {
      const text = all[which];
      if (text === undefined) throw new Error(String(which));
      const tree = treeOf(text);
      const scalars = pathsIn(tree).filter((path) => typeof valueAt(tree, path) === 'string');
      const path = scalars[place % scalars.length];
      if (path === undefined) throw new Error(text);
      const result = editReport(text, [{ path, to }]);
      if ('refused' in result) throw new Error(`${path.join('.')}: ${result.refused}`);
      edited += 1;
      const after = treeOf(result.text);
      expect(valueAt(after, path)).toBe(to);
      for (const other of scalars.filter((one) => one !== path))
        expect([other, valueAt(after, other)]).toEqual([other, valueAt(tree, other)]);
      const [before, now] = [text.split('\n'), result.text.split('\n')];
      // Answers in one line each: one line differs, and nothing is added to the file.
      const differing = before.filter((line, at) => line !== now[at]);
      if (before.length === now.length) expect(differing.length).toBeLessThanOrEqual(1);
      else expect(before.slice(0, 2)).toEqual(now.slice(0, 2));
      expect(lineWith(result.text).filter((line) => line.startsWith('#'))).toEqual(
        lineWith(text).filter((line) => line.startsWith('#')),
      );
    }),
    { numRuns: runs },
  );
  expect(edited).toBe(runs);
});

test('answers taken out or added: every other answer, every comment and the narrative stay', () => {
  fc.assert(
    fc.property(fc.nat(all.length - 1), fc.nat(), fc.boolean(), (which, place, takeOut) => {
      const text = all[which];
      if (text === undefined) throw new Error(String(which));
      const tree = treeOf(text);
      const paths = pathsIn(tree).filter((path) => typeof path.at(-1) === 'string');
      const path = paths[place % paths.length];
      if (path === undefined) throw new Error(text);
      const target = takeOut ? path : [...path.slice(0, -1), 'summary_of_it'];
      const result = editReport(text, [{ path: target, to: takeOut ? null : { a: 'b', c: ['d', 'e'] } }]);
      if ('refused' in result) throw new Error(`${target.join('.')}: ${result.refused}`);
      const after = treeOf(result.text);
      expect(valueAt(after, target)).toEqual(takeOut ? undefined : { a: 'b', c: ['d', 'e'] });
      const isBelow = (one: Path): boolean => target.every((step, at) => one[at] === step);
      for (const other of pathsIn(tree).filter(
        (one) => !isBelow(one) && typeof valueAt(tree, one) === 'string',
      ))
        expect([other, valueAt(after, other)]).toEqual([other, valueAt(tree, other)]);
      expect(lineWith(result.text).filter((line) => line.startsWith('#'))).toEqual(
        lineWith(text).filter((line) => line.startsWith('#')),
      );
      expect(reportParts(result.text)?.narrative).toBe(reportParts(text)?.narrative);
    }),
    { numRuns: runs },
  );
});
