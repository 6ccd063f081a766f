import type { Shared } from '../intake/authored/shared.ts';
import type { Shop } from '../intake/authored/shop.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import type { Brand } from './brand/brand.ts';
import { composed } from './composedNames.ts';
import type { ContentFolder } from './contentFiles.ts';
import { notForInbox } from './inboxProblems.ts';
import { readShared } from './sharedFiles.ts';
import { readWritten, type WrittenReport } from './writtenReport.ts';

/** All that lies in a content folder. */
interface Content {
  readonly shop: Shop | null;
  readonly reports: readonly WrittenReport[];
  /** Names of all folders of reports, also where only some are looked at. */
  readonly folders: readonly string[];
  /** Problems of what the reports share. */
  readonly problems: readonly Problem[];
  /** Files in the inbox that wait to become drafts. */
  readonly waiting: readonly string[];
}

/** Reads a content folder; `only` keeps to some reports. */
export function readContent(folder: ContentFolder, only: readonly string[] = []): Content {
  const { shared, slugs, brand: _brand, ...rest } = listContent(folder, only);
  return { ...rest, shop: shared.shop, reports: slugs.map((slug) => readWritten(folder, slug, shared)) };
}

/** What lies in a content folder, reports by name only. */
export interface ContentList extends Omit<Content, 'shop' | 'reports'> {
  readonly shared: Shared;
  readonly brand: Brand;
  readonly slugs: readonly string[];
}

/** Looks at a content folder without reading its reports; `only` keeps to some of them. */
export function listContent(folder: ContentFolder, only: readonly string[] = []): ContentList {
  const { shared, brand, problems } = readShared(folder);
  const there = folder.folders('reports');
  const wanted = only.map(composed);
  const slugs = [...new Set(there)].filter((slug) => wanted.length === 0 || wanted.includes(slug));
  const missing = wanted
    .filter((slug) => !slugs.includes(slug))
    .map((slug) =>
      makeProblem(
        'report-missing',
        { file: `reports/${slug}` },
        {
          expected: 'a report of that name',
          found: null,
          cure: `Write one of: ${there.join(', ') || 'none is there yet'}.`,
        },
      ),
    );
  const misplaced = only.length === 0 ? misplacedIn(folder) : [];
  const strangers = only.length === 0 ? notForInbox(folder) : [];
  const root = folder.troubleWith('');
  // Where the whole cannot be listed, no part of it can.
  const unreadable = root.length > 0 ? root : ['reports', 'contenders', 'inbox'].flatMap(folder.troubleWith);
  const empty = slugs.length === 0 && only.length === 0 && unreadable.length === 0 ? [noReports(folder)] : [];
  return {
    shared,
    brand,
    slugs,
    folders: there,
    problems: [
      ...problems,
      ...unreadable,
      ...missing,
      ...sameAddress(there),
      ...misplaced,
      ...strangers,
      ...empty,
    ],
    waiting: waitingFiles(folder),
  };
}

/** Reports whose addresses are one, for every host or for those that do not tell small letters from capitals. */
function sameAddress(slugs: readonly string[]): readonly Problem[] {
  const first = new Map<string, string>();
  return slugs.flatMap((slug) => {
    const other = first.get(slug.toLowerCase());
    first.set(slug.toLowerCase(), other ?? slug);
    if (other === undefined) return [];
    return [
      makeProblem(
        'duplicate-slug',
        { file: `reports/${slug}` },
        {
          expected: 'an address of its own for each report',
          found:
            other === slug
              ? `two folders named ${slug}: in one of them an accent is kept apart from its letter`
              : `${other} and ${slug}, which differ in capital letters only; many hosts take them for one`,
          cure: 'Rename one of the two folders.',
        },
      ),
    ];
  });
}

/** What would else be passed over in silence: links in place of folders or files, and files of reports that lie in no report. */
function misplacedIn(folder: ContentFolder): readonly Problem[] {
  const links = [
    ...folder.links('').filter((name) => ['reports', 'contenders', 'inbox'].includes(name)),
    ...folder.links('reports').map((name) => `reports/${name}`),
  ];
  const leadingOut = ['contenders', 'inbox']
    .filter((under) => !links.includes(under))
    .flatMap((under) => folder.links(under).map((name) => `${under}/${name}`))
    .filter((path) => folder.size(path) === null);
  const loose = folder
    .files('reports')
    .filter((name) => /\.(?:csv|md)$/i.test(name) && !links.includes(`reports/${name}`));
  return [
    ...[...links, ...leadingOut].map((path) =>
      makeProblem(
        'folder-is-link',
        { file: path },
        {
          expected: 'what lies in the content folder itself',
          found: 'a symbolic link',
          cure: 'Copy what it leads to in its place: content must be whole wherever it is built.',
        },
      ),
    ),
    ...loose.map((name) =>
      makeProblem(
        'file-outside-report',
        { file: `reports/${name}` },
        {
          expected: 'a folder for each report, with its files in it',
          found: name,
          cure: /\.csv$/i.test(name)
            ? `Make a report of it with npm run draft -- content/reports/${name}, or move it into its report.`
            : 'Move it into the folder of its report, named report.md.',
          ...(/\.csv$/i.test(name)
            ? { cureAtDesk: 'Drop it on the first page to make a report of it, or move it into its report.' }
            : {}),
        },
      ),
    ),
  ];
}

/** The files in the inbox that are to become drafts; a link could lead to what was never meant to be shown. */
export function waitingFiles(folder: ContentFolder): readonly string[] {
  const links = folder.links('inbox');
  return folder.files('inbox').filter((name) => /\.csv$/i.test(name) && !links.includes(name));
}

function noReports(folder: ContentFolder): Problem {
  return makeProblem(
    'no-reports',
    { file: 'reports' },
    {
      expected: 'at least one report in reports/<name>/report.md',
      found: folder.exists ? 'no report' : `no folder ${folder.root}`,
      cure: 'Start one from a session file: npm run draft -- FILE.csv',
      cureAtDesk: 'Start one: drop the file of a session on this page.',
    },
  );
}
