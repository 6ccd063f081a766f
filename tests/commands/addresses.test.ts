// Whatever `check` passes as a place for the site or as the name of a report can be built, and every link answers.
import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { brokenLinks } from './brokenLinks.ts';
import { build, foldersFor } from './builds.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from './contentFolder.ts';

const quoted = (text: string): string => `'${text.replaceAll("'", "''")}'`;

const odd: readonly (readonly [typed: string, stands: string])[] = [
  [
    'HTTPS://Tests.Größe.Example:8443//größe//drivers',
    'https://tests.xn--gre-6ka8i.example:8443/gr%C3%B6%C3%9Fe/drivers/',
  ],
  ['https://127.0.0.1/a-b(c)!$&*:@+,;=~/x/../', 'https://127.0.0.1/a-b(c)!$&*:@+,;=~/'],
];

describe.each(odd)('a site at %s', (typed, stands) => {
  const apart = 'gro\u0308ße';
  const folders = foldersFor(
    contentFolder({
      'shop.yaml': `${shop}address: ${quoted(typed)}\n`,
      // Both names with the dots kept apart from their letter, as some disks have them.
      [`reports/${apart}/report.md`]: twoHeads((front) => front.replace('shots.csv', 'sch\u00fcsse.csv')),
      [`reports/${apart}/schu\u0308sse.csv`]: twoHeadsCsv,
      'reports/_v2.1/report.md': twoHeads(),
      'reports/_v2.1/shots.csv': twoHeadsCsv,
    }),
  );
  const run = build(folders);

  test('is built, every link answers, and addresses are composed', () => {
    expect(run.status, run.said).toBe(0);
    expect(brokenLinks(folders.out, stands)).toEqual([]);
    expect(readdirSync(join(folders.out, 'reports')).sort()).toEqual(['_v2.1', 'gr\u00f6ße']);
    const sitemap = readFileSync(join(folders.out, 'sitemap-0.xml'), 'utf8');
    expect(sitemap).toContain(`<loc>${stands.replaceAll('&', '&amp;')}reports/gr%C3%B6%C3%9Fe/</loc>`);
  });

  test('a page taken away would be missed', () => {
    rmSync(join(folders.out, 'method'), { recursive: true });
    expect(brokenLinks(folders.out, stands).some((link) => link.endsWith('method/'))).toBe(true);
  });
});
