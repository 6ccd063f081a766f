import { basename, dirname, join } from 'node:path';
import { diskView, followed, isSame, isWithin, type FolderView } from './folderView.ts';
import { formerFiles, isFormerSite } from './formerSite.ts';
import { cacheEntries, sourceFolders, type FolderDecision, type Places } from './places.ts';
import { filesBelow, foreignIn, isEmptySite, readSiteMark } from './siteMark.ts';

/** How many foreign files a sentence names. */
const mostNamed = 3;

/** A folder that a command is to write into. */
interface Wanted {
  /** What goes there. */
  readonly what: string;
  readonly folder: string;
  /** The variable that names another, and a name that would do. */
  readonly named: readonly [variable: string, usual: string];
  /** Why nothing may be written at a path, whatever lies there; null where it may. */
  readonly inTheWay: (path: string) => string | null;
  /** What lies in a folder and keeps us out, and what to do about it; null where nothing does. */
  readonly foreign: (path: string, names: readonly string[]) => readonly [why: string, cure: string] | null;
}

/** Whether a build may write its site into `outDir`. Nothing is touched; disk errors are thrown. */
export const decideOut = (places: Places, view: FolderView = diskView): FolderDecision =>
  decide(places, view, {
    what: 'The site',
    folder: places.outDir,
    named: ['OUT_DIR', 'dist'],
    inTheWay: (path) =>
      within(path, places.contentDir, 'the content folder', view) ??
      cacheInTheWay(path, places.cacheDir, view),
    foreign: (path, names) => foreignInSite(path, names, places.projectFolder),
  });

/** Whether a command may keep what it works out in `cacheDir`. Nothing is touched; disk errors are thrown. */
export const decideCache = (places: Places, view: FolderView = diskView): FolderDecision =>
  decide(places, view, {
    what: 'The cache',
    folder: places.cacheDir,
    named: ['CACHE_DIR', '.cache'],
    inTheWay: (path) => {
      const [content, site] = [real(places.contentDir, view), real(places.outDir, view)];
      if (isWithin(path, content, view)) return 'is the content folder or lies in it';
      if (isWithin(path, site, view)) return 'is the folder of the site or lies in it';
      return usedByCache(content, path, view) ? 'would use the content folder' : null;
    },
    foreign: (path, names) => {
      const foreign = names.filter((name) => !cacheEntries.test(name));
      if (foreign.length === 0 || names.includes(cacheMarkName)) return null;
      // The one of the project itself also holds what its tests make.
      if (isSame(path, real(join(places.projectFolder, '.cache'), view), view)) return null;
      return [
        `holds files that are no cache of ours (${someOf(foreign)})`,
        'name an empty folder in CACHE_DIR, or move them away',
      ];
    },
  });

function decide(places: Places, view: FolderView, wanted: Wanted): FolderDecision {
  const [variable, usual] = wanted.named;
  const refused = (path: string, why: string, cure: string): FolderDecision => ({
    kind: 'refused',
    sentence: `${wanted.what} would go to ${path}, which ${why}: ${cure}.`,
  });
  const where = followed(wanted.folder, view);
  if (where.kind !== 'path')
    return refused(wanted.folder, nowhere(where), `mend the link, or name a folder in ${variable}`);
  const { path } = where;
  const elsewhere = `name a folder of its own in ${variable}, such as ${usual}`;
  const inTheWay = reserved(path, places, view) ?? wanted.inTheWay(path);
  if (inTheWay !== null) return refused(path, inTheWay, elsewhere);
  const kind = view.kind(path);
  if (kind !== null && kind !== 'folder') return refused(path, 'is no folder', elsewhere);
  const foreign = kind === null ? null : wanted.foreign(path, view.names(path));
  return foreign === null ? { kind: 'usable', folder: path } : refused(path, ...foreign);
}

function foreignInSite(
  path: string,
  names: readonly string[],
  projectFolder: string,
): ReturnType<Wanted['foreign']> {
  if (isEmptySite(names)) return null;
  const own = ownFiles(path, projectFolder);
  if (own === 'damaged')
    return ['holds a site whose list of files is damaged', 'look it over and delete it yourself once'];
  if (own === null)
    return [
      `holds files that no build of ours wrote (${someOf(names)})`,
      'name an empty folder in OUT_DIR, or move them away',
    ];
  if (own.unmarked.length === 0) return null;
  return [
    `holds a site of an earlier version and files that it did not write (${someOf(own.unmarked)})`,
    'move them away, build, and put them back: from then on builds leave them alone',
  ];
}

/** The hidden file by which a folder is known to be a cache of ours. */
export const cacheMarkName = '.straightface-cache';

/** What of a folder is ours: the files that the last build wrote, and what an earlier version did not write. */
interface OwnFiles {
  readonly paths: readonly string[];
  /** In a site without mark, files that are none of it. */
  readonly unmarked: readonly string[];
}

/** Null for a folder that is no site of ours; `damaged` where its mark cannot be read. */
export function ownFiles(folder: string, projectFolder: string): OwnFiles | 'damaged' | null {
  const mark = readSiteMark(folder);
  if (mark.kind === 'damaged') return 'damaged';
  if (mark.kind === 'list') return { paths: mark.paths, unmarked: [] };
  if (!isFormerSite(folder)) return null;
  const paths = formerFiles(filesBelow(folder), publishedFiles(projectFolder));
  return { paths, unmarked: foreignIn(folder, paths) };
}

function publishedFiles(projectFolder: string): readonly string[] {
  const folder = join(projectFolder, 'public');
  return diskView.kind(folder) === 'folder' ? filesBelow(folder) : [];
}

type Nowhere = Exclude<ReturnType<typeof followed>, { readonly kind: 'path' }>;

const nowhere = (where: Nowhere): string =>
  where.kind === 'dangling'
    ? `leads over the link ${where.link} to nowhere`
    : `leads through ${where.file}, which is a file`;

const real = (path: string, view: FolderView): string => {
  const where = followed(path, view);
  return where.kind === 'path' ? where.path : path;
};

/** Why a path is one that no command may write into, whatever lies there; null where it may. */
function reserved(
  path: string,
  { projectFolder, home, workingFolder }: Places,
  view: FolderView,
): string | null {
  if (dirname(path) === path) return 'is the root of the disk';
  if (isWithin(real(projectFolder, view), path, view)) return 'is the project itself or holds it';
  if (isWithin(real(home, view), path, view)) return 'is your home folder or holds it';
  if (isWithin(real(workingFolder, view), path, view)) return 'is the folder you work in or holds it';
  for (const name of sourceFolders) {
    if (isWithin(path, join(real(projectFolder, view), name), view))
      return `belongs to the project (${name})`;
  }
  return null;
}

function within(path: string, other: string, name: string, view: FolderView): string | null {
  const folder = real(other, view);
  if (isSame(path, folder, view)) return `is ${name}`;
  if (isWithin(path, folder, view)) return `lies in ${name}`;
  return isWithin(folder, path, view) ? `holds ${name}` : null;
}

function cacheInTheWay(path: string, cacheDir: string, view: FolderView): string | null {
  const cache = real(cacheDir, view);
  if (isWithin(cache, path, view)) return 'is the cache folder or holds it';
  return usedByCache(path, cache, view) ? 'belongs to the cache' : null;
}

/** Whether a folder is one that the cache makes for itself, or lies in it. Beside them a cache folder may hold others. */
function usedByCache(path: string, cache: string, view: FolderView): boolean {
  for (let at = path; dirname(at) !== at; at = dirname(at)) {
    if (isSame(dirname(at), cache, view)) return cacheEntries.test(basename(at));
  }
  return false;
}

function someOf(names: readonly string[]): string {
  const shown = names.toSorted().slice(0, mostNamed);
  const more = names.length - shown.length;
  return `${shown.join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
}
