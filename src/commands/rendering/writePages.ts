import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { isListed } from '../../site/isListed.ts';
import type { PageRoutes } from './pagesEntry.ts';

type Path = Awaited<ReturnType<PageRoutes['paths']>>[number];

/** Where pages are written, and by which address they are asked for. */
export interface PagesTarget {
  readonly folder: string;
  /** Of the site where it is known: pages see it as that of the request. */
  readonly origin: string;
  /** Path of the site on its host, with a slash at both ends. */
  readonly base: string;
}

/** A page or file that was written. */
export interface WrittenPage {
  /** Path of a page that searches should find, such as `/reports/<slug>/`; null for others, and files of other kinds. */
  readonly listed: string | null;
  /** Path of its file in the folder, with slashes. */
  readonly file: string;
}

/** Renders paths one after the other into their files. @throws what stops a page */
export async function writePages(
  paths: readonly Path[],
  { render }: Pick<PageRoutes, 'render'>,
  target: PagesTarget,
): Promise<readonly WrittenPage[]> {
  const written: WrittenPage[] = [];
  for (const path of paths) {
    const response = await render(
      new Request(new URL(addressOf(path, target.base), target.origin)),
      path.route,
    );
    if (!response.ok && response.status !== 404)
      throw new Error(`${path.pathname} answers with ${response.status}.`);
    const body = new Uint8Array(await response.arrayBuffer());
    const { page, file } = writtenAt(path);
    mkdirSync(dirname(join(target.folder, file)), { recursive: true });
    writeFileSync(join(target.folder, file), body);
    written.push({ listed: page !== null && isListed(new TextDecoder().decode(body)) ? page : null, file });
  }
  return written;
}

const isPage = ({ route }: Path): boolean => route.type === 'page';

/** The address as a browser would ask for it. */
function addressOf(path: Path, base: string): string {
  const inner = path.pathname.replace(/^\//, '');
  return isPage(path) && inner !== '' && !inner.endsWith('/') ? `${base}${inner}/` : `${base}${inner}`;
}

/** A page lies in a folder of its name, but for the one that hosts show where there is none (common practice). */
function writtenAt(path: Path): { readonly page: string | null; readonly file: string } {
  const inner = path.pathname.replace(/^\/|\/$/g, '');
  if (!isPage(path)) return { page: null, file: inner };
  if (inner === '404') return { page: null, file: '404.html' };
  return inner === ''
    ? { page: '/', file: 'index.html' }
    : { page: `/${inner}/`, file: `${inner}/index.html` };
}
