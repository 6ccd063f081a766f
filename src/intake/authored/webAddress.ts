import { answer, typed } from './answers.ts';
import { given, invalid, refused, understood } from './trouble.ts';

/** Where the site stands: `site` without a slash at its end, `base` percent-encoded and with one at both ends. */
export interface Address {
  readonly site: string;
  readonly base: string;
}

const expected = 'the address of the published site, such as https://reports.example/tests/';
const fromTheStart = 'Write it from https:// on, without anything after a ? or #.';

/** Characters of a folder that stand for themselves on every host, but for those that an address keeps for itself. */
const plainFolders = /^[\p{L}\p{M}\p{N}/._~!$()*+,;=:@&-]*$/u;

/** The address of the published site. */
export const webAddress = answer(
  typed.normalize('NFC').transform((answered, context): Address => {
    const read = readAddress(answered);
    return given(
      typeof read === 'string' ? refused(invalid([], expected, answered, read)) : understood(read),
      context,
    );
  }),
  { expected, cure: fromTheStart },
  'a web address, such as `https://reports.example/tests/`',
  { type: 'string', pattern: '^\\s*[Hh][Tt][Tt][Pp][Ss]?://[^?#]+$' },
).describe(
  'where the site will stand, with its folder if it has one; feeds, e-mail editions and sitemap need it',
);

/** The address in the form that links need, or what to write instead. */
function readAddress(typed: string): Address | string {
  if (!/^https?:\/\//i.test(typed) || !URL.canParse(typed)) return fromTheStart;
  const url = new URL(typed);
  if (url.search !== '' || url.hash !== '') return fromTheStart;
  if (url.username !== '' || url.password !== '')
    return 'Write it without a name and a password: every page would show them.';
  const folders = decoded(url.pathname);
  if (folders === null || !plainFolders.test(folders))
    return 'Write folders with letters, digits and hyphens only, without blanks, percent signs and slashes that are written as %2F.';
  const base = `/${folders
    .split('/')
    .filter((folder) => folder !== '')
    .join('/')}/`.replace('//', '/');
  if (/\/[^/]+\.(?:x?html?|php|aspx?)\/$/i.test(base))
    return `Write the folder that the site stands in, not one of its pages: ${url.origin}${base.replace(/[^/]+\/$/, '')}`;
  return { site: url.origin, base: encodeURI(base) };
}

/** The path with its percent signs read; null where they cannot be. */
function decoded(path: string): string | null {
  try {
    return decodeURI(path).normalize('NFC');
  } catch {
    return null;
  }
}
