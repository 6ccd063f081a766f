/** Addresses of the site's own pages under its base path; `path` begins with a slash. */
export function hrefIn(base: string): (path: string) => string {
  const root = base.replace(/\/+$/, '');
  return (path) => `${root}${path}`;
}
