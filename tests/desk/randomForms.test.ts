// Whatever is typed into the form of a report written by hand, nothing but the answer that was meant is another one after.
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runsOf } from '../everyday.ts';
import { fieldsOf } from '../../src/desk/answerGroups.ts';
import type { AnswerField } from '../../src/desk/answerFields.ts';
import { reportAtDesk } from '../../src/desk/reportAtDesk.ts';
import { groupsOf } from '../../src/desk/saveReport.ts';
import { controlName } from '../../src/desk/submittedAnswers.ts';
import { reportParts } from '../../src/intake/edits/reportParts.ts';
import { valueAt, type Tree } from '../../src/intake/authored/tree.ts';
import { sha256 } from '../../src/site/contentFiles.ts';
import { contentFolder, shop } from '../commands/contentFolder.ts';
import { atDesk } from './atDesk.ts';

const cases = resolve('tests/cases');
/** Short sessions: the page is made anew after each answer. */
const reports = ['least', 'five-heads', 'one-after-another', 'metres'] as const;
const editsEach = runsOf(50);

/** A report of the cases with a comment at every third line of its answers, and whatever lies beside it. */
function filesOf(slug: string): Readonly<Record<string, string>> {
  const folder = join(cases, slug, 'content/reports', slug);
  const names = readdirSync(folder);
  const files = Object.fromEntries(names.map((name) => [name, readFileSync(join(folder, name), 'utf8')]));
  const parts = reportParts(files['report.md'] ?? '');
  if (parts === null) throw new Error(slug);
  let line = 0;
  const answers = parts.answers.replaceAll(/^(?=[a-z_]+:)/gm, () =>
    (line += 1) % 3 === 0 ? `# ${line}: asked by "Q", 'R' and {S}?   \n` : '',
  );
  const text = parts.opening + answers + parts.closing + parts.narrative;
  return Object.fromEntries(
    Object.entries({ ...files, 'report.md': text }).map(([name, own]) => [`reports/${slug}/${name}`, own]),
  );
}

const typed = fc.oneof(
  {
    weight: 3,
    arbitrary: fc.constantFrom('2026-04-01', 'yes', 'not recorded', "Dave's: the #1 {best}", '- dash', '9°'),
  },
  fc.constantFrom('@', '"', "'", '0x1F', '&a', '*b', '!t', '%', '`', '---', '# no', '<b>&amp;</b>', ''),
  fc.string({ maxLength: 30, unit: 'grapheme-ascii' }).map((text) => text.trim()),
);

const commentsIn = (text: string): readonly string[] => text.split('\n').filter((line) => /^\s*#/.test(line));

/** The lines of either text between the lines that they begin and end with alike. */
function differing(
  before: readonly string[],
  after: readonly string[],
): readonly [readonly string[], readonly string[]] {
  const from = before.findIndex((line, at) => line !== after[at]);
  if (from < 0) return [[], after.slice(before.length)];
  let same = 0;
  const most = Math.min(before.length, after.length) - from;
  while (same < most && before.at(-1 - same) === after.at(-1 - same)) same += 1;
  return [before.slice(from, before.length - same), after.slice(from, after.length - same)];
}

function openDesk(slug: string) {
  const root = contentFolder({ 'shop.yaml': shop, ...filesOf(slug) });
  const file = join(root, `reports/${slug}/report.md`);
  const desk = atDesk(root);
  const read = (): string => readFileSync(file, 'utf8');
  /** What the form asks, and what the file answers. */
  const asks = (): { readonly fields: readonly AnswerField[]; readonly tree: Tree } => {
    const report = reportAtDesk(root, slug);
    if (report?.tree == null) throw new Error(`${slug} cannot be read`);
    return { fields: fieldsOf(groupsOf(report)), tree: report.tree };
  };
  const send = async (
    field: AnswerField,
    to: string,
    seen = sha256(Buffer.from(read())),
  ): Promise<string> => {
    const sent = await desk.post(`/desk/reports/${slug}/`, { seen, do: 'save', [controlName(field)]: to });
    return sent.text();
  };
  return { file, read, asks, send };
}

const plain = (text: string): string => text.replace(/\r\n?/g, '\n').trim();

describe('answers sent by form', () => {
  test.each(reports)(
    `${editsEach} into %s: comments, other answers and the narrative stay to the byte`,
    async (slug) => {
      const { read, asks, send } = openDesk(slug);
      let written = 0;
      let { fields, tree: treeBefore } = asks();
      for (const [place, to] of fc.sample(fc.tuple(fc.nat(), typed), { seed: 19, numRuns: editsEach })) {
        const asked = fields.filter(({ typed: own }) => own.length <= 1);
        const field = asked[place % asked.length];
        if (field === undefined) throw new Error('the form asks nothing');
        const before = read();
        const page = await send(field, to);
        const after = read();
        const { fields: fieldsAfter, tree: treeAfter } = asks();
        const name = `${field.name} = ${JSON.stringify(to)}`;
        expect(commentsIn(after), name).toEqual(commentsIn(before));
        expect(reportParts(after)?.narrative, name).toBe(reportParts(before)?.narrative);
        for (const other of asked.filter((one) => one !== field && !overlaps(one, field)))
          expect([name, other.name, valueAt(treeAfter, other.path)]).toEqual([
            name,
            other.name,
            valueAt(treeBefore, other.path),
          ]);
        [fields, treeBefore] = [fieldsAfter, treeAfter];
        if (after === before) continue;
        written += 1;
        expect(page).toContain('Saved.');
        expect(plain(String(valueAt(treeAfter, field.path) ?? '')), name).toBe(plain(to));
        const [gone, come] = differing(before.split('\n'), after.split('\n'));
        expect([gone.length <= 1, come.length <= 2], JSON.stringify([name, gone, come])).toEqual([
          true,
          true,
        ]);
      }
      expect(written).toBeGreaterThan(editsEach / 2);
    },
    240_000,
  );
});

const overlaps = (one: AnswerField, other: AnswerField): boolean =>
  [one.path, other.path].some((path, index) =>
    path.every((step, at) => step === (index === 0 ? other.path : one.path)[at]),
  );

describe('a file that changes underneath', () => {
  const question = (fields: readonly AnswerField[]): AnswerField => {
    const found = fields.find(({ name }) => name === 'question');
    if (found === undefined) throw new Error('no question is asked');
    return found;
  };

  test('is never written over: what was typed stands in the form, and goes in when it is saved again', async () => {
    const { file, read, asks, send } = openDesk('least');
    for (let count = 1; count <= 10; count += 1) {
      const seen = sha256(Buffer.from(read()));
      const elsewhere = read().replace('---\n', `---\n# An editor was here, ${count}.\n`);
      writeFileSync(file, elsewhere);
      const page = await send(question(asks().fields), `Typed ${count} times`, seen);
      expect(read()).toBe(elsewhere);
      expect(page).toContain('Nothing was written.');
      expect(page).toContain(`Typed ${count} times`);
      await send(question(asks().fields), `Typed ${count} times`);
      expect(read()).toContain(`question: Typed ${count} times`);
      expect(read()).toContain(`# An editor was here, ${count}.`);
    }
  });

  test('by two forms at once, takes one of the two answers', async () => {
    const { read, asks, send } = openDesk('least');
    const seen = sha256(Buffer.from(read()));
    const pages = await Promise.all(
      ['The first', 'The second', 'The third'].map((to) => send(question(asks().fields), to, seen)),
    );
    expect(pages.filter((page) => page.includes('Saved.'))).toHaveLength(1);
    expect(pages.filter((page) => page.includes('Nothing was written'))).toHaveLength(2);
    expect(read().match(/^question: The (?:first|second|third)$/gm)).toHaveLength(1);
  });
});
