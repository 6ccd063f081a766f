import { basename, dirname, join } from 'node:path';
import { diskView, followed, isSame, isWithin, type FolderView } from './folderView.ts';
import { formerFiles, isFormerSite } from './formerSite.ts';
import { cacheEntries, sourceFolders, type FolderDecision, type Places } from './places.ts';
import { filesBelow, foreignIn, isEmptySite, readSiteMark } from './siteMark.ts';

/** How many foreign files a sentence names. */
const mostNamed = 3;

/** Whether a build may write its site into `outDir`. Nothing is touched; disk errors are thrown. */
export function decideOut(places: Places, view: FolderView = diskView): FolderDecision {
  const refused = refusal('The site');
  const where = followed(places.outDir, view);
  if (where.kind !== 'path')
    return refused(places.outDir, nowhere(where), 'mend the link, or name a folder in OUT_DIR');
  const { path } = where;
  const elsewhere = 'name a folder of its own in OUT_DIR, such as dist';
  const inTheWay =
    reserved(path, places, view) ??
    within(path, places.contentDir, 'the content folder', view) ??
    cacheInTheWay(path, places.cacheDir, view);
  if (inTheWay !== null) return refused(path, inTheWay, elsewhere);
  const kind = view.kind(path);
  if (kind === null) return { kind: 'usable', folder: path };
  if (kind !== 'folder') return refused(path, 'is no folder', elsewhere);
  if (isEmptySite(view.names(path))) return { kind: 'usable', folder: path };
  const own = ownFiles(path, places.projectFolder);
  if (own === 'damaged') {
    return refused(
      path,
      'holds a site whose list of files is damaged',
      'look it over and delete it yourself once',
    );
  }
  if (own === null) {
    return refused(
      path,
      `holds files that no build of ours wrote (${someOf(view.names(path))})`,
      'name an empty folder in OUT_DIR, or move them away',
    );
  }
  if (own.unmarked.length > 0) {
    return refused(
      path,
      `holds a site of an earlier version and files that it did not write (${someOf(own.unmarked)})`,
      'move them away, build, and put them back: from then on builds leave them alone',
    );
  }
  return { kind: 'usable', folder: path };
}

/** Whether a command may keep what it works out in `cacheDir`. Nothing is touched; disk errors are thrown. */
export function decideCache(places: Places, view: FolderView = diskView): FolderDecision {
  const refused = refusal('The cache');
  const where = followed(places.cacheDir, view);
  if (where.kind !== 'path')
    return refused(places.cacheDir, nowhere(where), 'mend the link, or name a folder in CACHE_DIR');
  const { path } = where;
  const elsewhere = 'name a folder of its own in CACHE_DIR, such as .cache';
  const inTheWay =
    reserved(path, places, view) ??
    (isWithin(path, real(places.contentDir, view), view) ? 'is the content folder or lies in it' : null) ??
    (isWithin(path, real(places.outDir, view), view) ? 'is the folder of the site or lies in it' : null) ??
    (usedByCache(real(places.contentDir, view), path, view) ? 'would use the content folder' : null);
  if (inTheWay !== null) return refused(path, inTheWay, elsewhere);
  const kind = view.kind(path);
  if (kind === null) return { kind: 'usable', folder: path };
  if (kind !== 'folder') return refused(path, 'is no folder', elsewhere);
  const names = view.names(path);
  const foreign = names.filter((name) => !cacheEntries.test(name));
  // The one of the project itself also holds what its tests make.
  const isOwn =
    names.includes(cacheMarkName) || isSame(path, real(join(places.projectFolder, '.cache'), view), view);
  if (foreign.length > 0 && !isOwn) {
    return refused(
      path,
      `holds files that are no cache of ours (${someOf(foreign)})`,
      'name an empty folder in CACHE_DIR, or move them away',
    );
  }
  return { kind: 'usable', folder: path };
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

function refusal(what: string) {
  return (path: string, why: string, cure: string): FolderDecision => ({
    kind: 'refused',
    sentence: `${what} would go to ${path}, which ${why}: ${cure}.`,
  });
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
