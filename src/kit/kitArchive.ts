import { zipSync, type ZippableFile } from 'fflate';

/** A file by its path inside an archive, with slashes. */
export interface ArchiveFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** What is compressed already; deflate would take time for nothing. */
const stored = /\.(?:png|jpe?g|webp|zip)$/;

/**
 * A zip whose files all lie in one folder, as the names of many reports meet where downloads go. The same files give the
 * same bytes, wherever and whenever: sorted by path, each from noon of `day`.
 *
 * @param day ISO date
 */
export function kitArchive(folder: string, files: readonly ArchiveFile[], day: string): Uint8Array {
  const [year = 1980, month = 1, date = 1] = day.split('-').map(Number);
  // A zip has times of day without a zone: noon as the machine has it is noon everywhere.
  const mtime = new Date(year, month - 1, date, 12);
  return zipSync(
    Object.fromEntries(
      files
        .toSorted((x, y) => (x.path < y.path ? -1 : 1))
        .map(({ path, bytes }): readonly [string, ZippableFile] => [
          `${folder}/${path}`,
          [bytes, { mtime, level: stored.test(path) ? 0 : 6, os: 3, attrs: 0o644 << 16 }],
        ]),
    ),
  );
}
