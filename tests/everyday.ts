/**
 * `npm test` takes six minutes: every file of code, all words, and a thing or two of each kind where the whole tries all
 * of them. `npm run testall`, and vitest by itself, leave out nothing.
 */
export const isEveryday = process.env['TESTS'] === 'everyday';

/** All of them, or those of every day. */
export function allOr<T>(all: readonly T[], everyday: readonly T[]): readonly T[] {
  return isEveryday ? everyday : all;
}

/** The first of each kind. */
export function firstOfEach<T>(all: readonly T[], kindOf: (one: T) => string): readonly T[] {
  return [...Map.groupBy(all, kindOf).values()].flatMap((alike) => alike.slice(0, 1));
}

/** Each so many of them, from the first one on. */
export function eachSoMany<T>(all: readonly T[], stride: number): readonly T[] {
  return all.filter((_, index) => index % stride === 0);
}

/** How often a property is tried. */
export const runsOf = (runs: number): number => (isEveryday ? Math.ceil(runs / 6) : runs);

/** Files that only the whole runs: each takes long, and what it guards is seldom touched. */
export const notEveryday: readonly string[] = [
  // Commands that are killed, hindered or run side by side in every order, and sites that are built again and again.
  'tests/commands/damagedCache.test.ts',
  'tests/commands/framework.test.ts',
  'tests/commands/kill.test.ts',
  'tests/commands/repeat.test.ts',
  'tests/commands/sitemap.test.ts',
  'tests/commands/unchangedSite.test.ts',
  'tests/commands/versions.test.ts',
  // Pages while somebody writes, what machines read in heads of pages, and every way in which a command can fail.
  'tests/commands/dev.test.ts',
  'tests/commands/heads.test.ts',
  'tests/commands/runCommand.test.ts',
  // Other programs: R and Python over published data, the vocabulary of schema.org.
  'tests/kit/reproduce.test.ts',
  'tests/kit/schemaOrg.test.ts',
  // What is installed and built from a package.
  'tests/commands/packed.test.ts',
  'tests/workflow/reports.test.ts',
  // The desk from an empty folder to a built site in a browser, and markup in every form; its pages are tried one by one every day.
  'tests/desk/hostileForms.test.ts',
  'tests/commands/desk.test.ts',
  'tests/commands/deskAccessibility.test.ts',
  'tests/commands/deskPlan.test.ts',
  // Sites of their own: a look of a shop, pictures of narratives, frames on other pages, lists of many reports, feeds.
  'tests/commands/brand.test.ts',
  'tests/commands/pictures.test.ts',
  'tests/site/brand.test.ts',
  'tests/site/frames.test.ts',
  'tests/site/unitsOfEveryPage.test.ts',
  'tests/site/lists.test.ts',
  'tests/site/kitFeeds.test.ts',
  // The auditor against pa11y.
  'tests/site/audit.test.ts',
];
