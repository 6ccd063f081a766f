import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { kitArchive, type ArchiveFile } from '../kit/kitArchive.ts';

/** What goes into the archive of a report besides its charts, by its path on the site and in the archive. */
const kept: readonly (readonly [onSite: string, inside: string])[] = [
  ['terms.txt', 'README.txt'],
  ...['captions.txt', 'shots.csv', 'findings.json', 'datapackage.json', 'reproduce.R', 'reproduce.py'].map(
    (name) => [name, name] as const,
  ),
  ...['share.png', 'email.html', 'email.txt', 'email-block.html'].map((name) => [name, name] as const),
];

/** Of `findings.json` the days. */
const days = z.object({ date: z.iso.date(), published: z.iso.date().nullable() });

/**
 * Writes `kit.zip` beside a report: all that an editor may take, as the built site has it.
 *
 * @param folder of the report
 */
export function writeKitArchive(folder: string, slug: string): void {
  const charts = join(folder, 'charts');
  const files: readonly ArchiveFile[] = [
    ...kept.flatMap(([onSite, path]) => fileAt(join(folder, onSite), path)),
    ...(existsSync(charts) ? readdirSync(charts) : []).flatMap((name) =>
      fileAt(join(charts, name), `charts/${name}`),
    ),
  ];
  const { date, published } = days.parse(JSON.parse(readFileSync(join(folder, 'findings.json'), 'utf8')));
  writeFileSync(join(folder, 'kit.zip'), kitArchive(slug, files, published ?? date));
}

/** A site without an address has no mails. */
function fileAt(file: string, path: string): readonly ArchiveFile[] {
  return existsSync(file) ? [{ path, bytes: readFileSync(file) }] : [];
}
