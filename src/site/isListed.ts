/** Whether a page may be found by searches: one that asks them to pass it over says so in its head. */
export function isListed(page: string): boolean {
  return !/<meta name="robots" content="[^"]*\bnoindex\b/.test(page.slice(0, page.indexOf('</head>')));
}
