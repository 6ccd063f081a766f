/** Addresses of the site's own pages under its base path, as typed or percent-encoded; `path` begins with a slash. */
export function hrefIn(base: string): (path: string) => string {
  const root = encodeURI(decodeURI(base)).replace(/\/+$/, '');
  return (path) => `${root}${path}`;
}
