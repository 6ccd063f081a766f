import { fewestContenders, mostContenders } from '../../intake/authored/contenderChecks.ts';
import { contenderHeadings, nounIn } from '../../intake/draft/contenderHeadings.ts';
import { openColumns, type OpenColumn } from '../../intake/draft/openColumns.ts';
import { understand, type Understood } from '../../intake/draft/understood.ts';
import { readShotFile } from '../../intake/shots/readShotFile.ts';
import type { ShotFile } from '../../intake/shots/shotFile.ts';

export interface NamedBytes {
  /** Without folders. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Session files as the reader understands them without a report. */
export interface SessionRead {
  readonly shotFiles: readonly ShotFile[];
  readonly understood: Understood;
  readonly varied: string | null;
  /** Null where a file must be mended before it can be used. */
  readonly openColumns: readonly OpenColumn[] | null;
}

const comparable = ({ contenders }: Understood): boolean =>
  contenders.length >= fewestContenders && contenders.length <= mostContenders;

/**
 * Reads the files of one session. Where the clubs in them are one and the same, or too many to be compared, a
 * column of balls, shafts and the like with two to six names tells what was.
 */
export function readSession(files: readonly NamedBytes[]): SessionRead {
  const headings = files.map(({ bytes }) => contenderHeadings(bytes));
  const parts = new Set(headings.flatMap(({ parts: own }) => own));
  const underClub = headings[0]?.club ?? [...parts][0] ?? null;
  const plain = read(files, null);
  const usual = { ...plain, varied: underClub === null ? null : nounIn(underClub) };
  if (comparable(plain.understood)) return usual;
  const others = [...parts].map((part) => ({ ...read(files, part), varied: part.toLowerCase() }));
  return others.find(({ understood }) => comparable(understood)) ?? usual;
}

function read(files: readonly NamedBytes[], varied: string | null): Omit<SessionRead, 'varied'> {
  const shotFiles = files.map(({ name, bytes }) =>
    readShotFile(name, bytes, varied === null ? {} : { varied }),
  );
  return {
    shotFiles,
    understood: understand(shotFiles),
    openColumns: openColumns(shotFiles.flatMap(({ problems }) => problems)),
  };
}
