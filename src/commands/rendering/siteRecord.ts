import { statSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { readSealed, writeSealed } from '../../site/sealed.ts';
import type { WrittenPage } from './writePages.ts';

/** What was written together of the same things: the files of a report, or a page. */
export interface SitePart {
  /** Changes whenever what it is made of does; null where that cannot be told. */
  readonly key: string | null;
  readonly written: readonly WrittenPage[];
}

/** The parts of a built site, each by a name that stays. */
export type SiteParts = ReadonlyMap<string, SitePart>;

const recorded = z.record(
  z.string(),
  z.object({
    key: z.string().nullable(),
    written: z.array(z.object({ file: z.string(), listed: z.string().nullable(), state: z.string() })),
  }),
);

/** Changes with the form of a record, so that none is read as another. */
const recordKey = 'site record 1';

/**
 * The parts of the site in a folder that are as the last build has left them: none of their files was changed, replaced
 * or lost since.
 */
export function readRecord(file: string, outDir: string): SiteParts {
  const bytes = readSealed(file, recordKey);
  if (bytes === null) return new Map();
  const parts = recorded.parse(JSON.parse(new TextDecoder().decode(bytes)));
  const whole = Object.entries(parts).filter(([, { written }]) =>
    written.every(({ file: path, state }) => stateOf(join(outDir, path)) === state),
  );
  return new Map(
    whole.map(([name, { key, written }]) => [
      name,
      { key, written: written.map(({ file: path, listed }) => ({ file: path, listed })) },
    ]),
  );
}

/** Writes down what a build has left in the folder. */
export function writeRecord(file: string, outDir: string, parts: SiteParts): void {
  const record = Object.fromEntries(
    [...parts].map(([name, { key, written }]) => [
      name,
      { key, written: written.map((page) => ({ ...page, state: stateOf(join(outDir, page.file)) ?? '' })) },
    ]),
  );
  writeSealed(file, recordKey, new TextEncoder().encode(JSON.stringify(record)));
}

/** What the system changes whenever a file is written or replaced, also where its time of change is put back. */
function stateOf(file: string): string | null {
  const found = statSync(file, { bigint: true, throwIfNoEntry: false });
  return found === undefined ? null : [found.ino, found.size, found.mtimeNs, found.ctimeNs].join(' ');
}
