/** Characters of a path that addresses read as something else. */
const misread = /[#?%]/;

/**
 * Why nothing can be built in a project folder of that path, in one sentence; null where it can. Astro takes paths for
 * addresses: with `%` in one, pages come out without styles and fonts, with `#` or `?` no page can be written.
 */
export function projectPathTrouble(projectFolder: string): string | null {
  const found = misread.exec(projectFolder)?.[0];
  if (found === undefined) return null;
  return `The project lies in ${projectFolder}, and pages cannot be built in a folder with ${found} in its path: move or rename the folder.`;
}
