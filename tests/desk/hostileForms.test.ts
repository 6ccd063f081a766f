// Every form of every page of the desk, with what nobody should type in each of its controls: it is refused, or is text.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { reportAtDesk } from '../../src/desk/reportAtDesk.ts';
import { shopAtDesk } from '../../src/desk/shopAtDesk.ts';
import type { ProblemKind } from '../../src/problems/kinds.ts';
import { sha256 } from '../../src/site/contentFiles.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { atDesk, type AtDesk } from './atDesk.ts';

const hostile: readonly string[] = [
  '"><b data-hostile>x</b><script data-hostile>x</script>',
  '</textarea></title></option><img data-hostile src=x onerror=x>',
  '{{ carry.alder }} {{#if x}} ${x} <%= x %>',
  'title: x\nstatus: withdrawn',
  '- x\n- y',
  '---\nstatus: withdrawn\n---\n',
  '&a x',
  '*a',
  '!!js/function "x"',
  '|\n  x\n x',
  '# x #',
  '{x: [y',
  '../../outside/report.md',
  '__proto__',
  'a\u0000b\u0007c\u001b[31md\u0085e\u2028f\u202eg\ufeff',
  'a\ud800b',
  '\u00a0x\n\u2003y\n\ty',
];
const veryMuch = 'x '.repeat(5_000);

/** The second one lacks an answer, and has no claims before it is given. */
const reports = ['two-heads', 'draft'] as const;

/** A content folder with whatever makes the desk show a form, between what lies outside of it. */
function open(): { readonly root: string; readonly content: string; readonly desk: AtDesk } {
  const marked = (front: string): string =>
    front.replace(
      '\nstatus: published',
      [
        '',
        'exclusions:',
        '  - {contender: alder, shot: 1, rule: misreads, reason: no reading}',
        '  - {metric: carry, below: 100 yd, reason: topped}',
        'claims: [{say: Birch goes farther, metric: carry, more: birch, than: alder, allow_unproven: true}]',
        'corrections: [{date: 2026-05-09, what: a slip, was: one, now: two}]',
        'replies: [{from: its maker, date: 2026-05-09, text: Thanks.}]',
        'aliases: [heads]',
        'status: published',
      ].join('\n'),
    );
  const root = contentFolder({
    'content/shop.yaml': shop,
    'content/inbox/waiting.csv': twoHeadsCsv.replaceAll('231.2', '232.2'),
    'content/reports/two-heads/report.md': twoHeads(marked),
    'content/reports/two-heads/shots.csv': twoHeadsCsv,
    'content/reports/draft/report.md': twoHeads((front) =>
      front.replace('status: published', 'status: draft').replace('consent: yes', 'consent:'),
    ),
    'content/reports/draft/shots.csv': twoHeadsCsv.replaceAll('231.2', '233.2'),
    'outside/report.md': twoHeads(),
    'dist/index.html': '<h1>Built</h1>',
  });
  return { root, content: join(root, 'content'), desk: atDesk(join(root, 'content')) };
}

const pages = [
  ...['/desk/', '/desk/shop/', '/desk/plan/'],
  ...reports.flatMap((slug) =>
    ['', 'shots/', ...(slug === 'draft' ? [] : ['claims/']), 'after/'].map(
      (part) => `/desk/reports/${slug}/${part}`,
    ),
  ),
];

interface Form {
  readonly action: string;
  /** What its buttons send; null for one that sends nothing itself. */
  readonly buttons: readonly (readonly [string, string] | null)[];
  readonly hidden: Readonly<Record<string, string>>;
  /** Names of its other controls. */
  readonly asked: readonly string[];
  readonly files: readonly string[];
}

function formsOf(page: string): readonly Form[] {
  const { document } = parseHTML(page);
  return [...document.querySelectorAll('form[method="post"]')].map((form) => {
    const id = form.getAttribute('id');
    const own = [
      ...form.querySelectorAll('input, textarea, select'),
      ...(id === null ? [] : document.querySelectorAll(`[form="${id}"]:not(button)`)),
    ];
    const buttons = [
      ...form.querySelectorAll('button'),
      ...(id === null ? [] : document.querySelectorAll(`button[form="${id}"]`)),
    ];
    const named = (wanted: (type: string | null) => boolean): readonly string[] => [
      ...new Set(
        own
          .filter((control) => wanted(control.getAttribute('type')))
          .flatMap((control) => control.getAttribute('name') ?? []),
      ),
    ];
    const hidden = own.filter((control) => control.getAttribute('type') === 'hidden');
    return {
      action: form.getAttribute('action') ?? '',
      buttons: buttons.map((button) => {
        const name = button.getAttribute('name');
        return name === null ? null : [name, button.getAttribute('value') ?? ''];
      }),
      hidden: Object.fromEntries(
        hidden.map((control) => [control.getAttribute('name') ?? '', control.getAttribute('value') ?? '']),
      ),
      asked: named((type) => type !== 'hidden' && type !== 'file'),
      files: named((type) => type === 'file'),
    };
  });
}

/** Every file that is not in the content folder. */
function outside(root: string): Readonly<Record<string, string>> {
  const files = readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((entry) => !entry.isDirectory())
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((file) => !file.startsWith(join(root, 'content/')));
  return Object.fromEntries(files.map((file) => [file, readFileSync(file, 'latin1')]));
}

/** What a form must leave as it was, whatever was typed: that the answers can be read, and where the report stands. */
const standing = (content: string): unknown => ({
  reports: reports.map((slug) => {
    const report = reportAtDesk(content, slug);
    return { slug, status: report?.tree?.['status'] ?? null };
  }),
  shop: shopAtDesk(content).groups.length > 0,
});

const unread: readonly ProblemKind[] = [
  'yaml-syntax',
  'front-matter-missing',
  'unknown-key',
  'file-unreadable',
  'file-too-large',
];

test('the pages have forms to fill', async () => {
  const { desk } = open();
  const forms = (
    await Promise.all(pages.map(async (page) => formsOf(await (await desk.get(page)).text())))
  ).flat();
  const posts = desk.app.routes.filter(({ method }) => method === 'POST').map(({ path }) => path);
  const reached = new Set(forms.map(({ action }) => action.replace(/reports\/[^/]+/, 'reports/:slug')));
  // The arithmetic is asked for by the script, with the form of the plan.
  expect(posts.filter((path) => !reached.has(`${path}/`))).toEqual(['/desk/plan/arithmetic']);
});

/** SHA-256 of the file that the forms of a page are made of. */
function seenOn(page: string, content: string): string {
  const [, slug] = /reports\/([^/]+)/.exec(page) ?? [];
  return sha256(readFileSync(join(content, slug === undefined ? 'shop.yaml' : `reports/${slug}/report.md`)));
}

describe.each(pages)('%s', (page) => {
  // Each control has its turn with several of them; the last is written in all of them.
  test.each([0, 8, 'very much'] as const)(
    'takes it as text, or not at all: %s',
    async (turn) => {
      const { root, content, desk } = open();
      const before = { outside: outside(root), standing: standing(content) };
      const forms = formsOf(await (await desk.get(page)).text());
      expect(forms.length).toBeGreaterThan(0);
      const textFor = (control: number): string =>
        turn === 'very much' ? veryMuch : (hostile[(control + turn) % hostile.length] ?? veryMuch);
      for (const [place, { action, buttons, hidden, asked, files }] of forms.entries())
        for (const button of buttons) {
          const seen = seenOn(page, content);
          const typed = Object.fromEntries(asked.map((name, index) => [name, textFor(place + index)]));
          const carried = Object.keys(hidden).filter((name) => name !== 'token' && name !== 'seen');
          const named = textFor(place).slice(0, 600);
          const sent = {
            ...hidden,
            ...typed,
            ...(button === null ? {} : { [button[0]]: [button[1]] }),
            ...Object.fromEntries(files.map((name) => [name, new File([veryMuch], `${named}.csv`)])),
          };
          // Once as the page sends it along, and once with its hidden controls replaced too.
          const replaced = Object.fromEntries(carried.map((name, index) => [name, textFor(place + index)]));
          for (const one of carried.length === 0 ? [sent] : [sent, { ...sent, ...replaced }]) {
            const response = await desk.post(action, { ...one, seen });
            const where = `${action} ${String(button)}`;
            expect([where, response.status < 500]).toEqual([where, true]);
            const { document } = parseHTML(await response.text());
            expect(document.querySelectorAll('[data-hostile]'), where).toHaveLength(0);
          }
        }
      expect(outside(root)).toEqual(before.outside);
      expect(standing(content)).toEqual(before.standing);
      const kinds = loadSite(content).problems.map(({ kind }) => kind);
      expect(kinds.filter((kind) => unread.includes(kind))).toEqual([]);
      const { document } = parseHTML(await (await desk.get(page)).text());
      expect(document.querySelectorAll('[data-hostile]')).toHaveLength(0);
    },
    60_000,
  );
});
