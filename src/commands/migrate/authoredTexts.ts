import { decodeText } from '../../intake/authored/decodeText.ts';
import type { ContentFolder } from '../../site/contentFiles.ts';
import { shopFile } from '../../site/sharedFiles.ts';
import type { AuthoredText, Unmigrated } from './migrateTexts.ts';

/** The files of a content folder that hold answers, and those that cannot be read. */
interface AuthoredTexts {
  /** The shop's own file last: it states the version, and is written when all others are. */
  readonly texts: readonly AuthoredText[];
  readonly unread: readonly Unmigrated[];
}

/** Reads all that a shop writes answers into. */
export function authoredTexts(folder: ContentFolder): AuthoredTexts {
  const sheets = folder.files('contenders').filter((name) => /\.ya?ml$/i.test(name));
  const files = [
    ...sheets.map((name) => ({ path: `contenders/${name}`, kind: 'contender' as const })),
    ...folder
      .folders('reports')
      .map((name) => ({ path: `reports/${name}/report.md`, kind: 'report' as const })),
    { path: shopFile, kind: 'shop' as const },
  ];
  const texts: AuthoredText[] = [];
  const unread: Unmigrated[] = [];
  for (const { path, kind } of files) {
    const { content: bytes, problems } = folder.bytes(path);
    const { text, encoding } =
      bytes === null ? { text: null, encoding: 'UTF-8' as const } : decodeText(path, bytes);
    if (text !== null) texts.push({ path, kind, text: `${markOf(bytes)}${text}`, encoding });
    else if (bytes !== null || problems.length > 0)
      unread.push({ path, why: 'It cannot be read. Mend what npm run check reports first.' });
    // What was brought along could not be told from what was not.
    else if (kind === 'shop')
      unread.push({
        path,
        why: 'It is not there, and it states the version. Write it with a line schema: 1.',
      });
  }
  return { texts, unread };
}

/** The byte order mark of UTF-8, which some editors put first and which is no part of a text. */
const markOf = (bytes: Uint8Array | null): string =>
  bytes?.[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? '\ufeff' : '';
