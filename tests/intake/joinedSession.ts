import { assembleSession } from '../../src/intake/assembleSession.ts';
import { defineSource } from '../../src/intake/authored/source.ts';
import { nothingShared } from '../../src/intake/authored/shared.ts';
import { readShotFile } from '../../src/intake/shots/readShotFile.ts';
import { reportText } from '../findings/reportOf.ts';

export const yard = 0.9144;

type Files = Readonly<Record<string, string>>;

/** The session of a report of Alder and Birch with these files beside it, in this order. */
export function joined(files: Files, front: Readonly<Record<string, string | null>> = {}) {
  const { source, problems } = defineSource({
    slug: 'invented',
    file: 'reports/invented/report.md',
    text: reportText({
      front: {
        contenders:
          '{alder: {label: Alder 9°, match: [A9], supplied_by: us, sold_here: new}, birch: {label: Birch, supplied_by: us, sold_here: new}}',
        session: `[${Object.keys(files).join(', ')}]`,
        ...front,
      },
    }),
    files: [],
    ...nothingShared,
  });
  if (source === null)
    throw new Error(problems.map(({ kind, found }) => `${kind}: ${found ?? ''}`).join('\n'));
  const read = Object.entries(files).map(([name, csv]) =>
    readShotFile(`reports/invented/${name}`, new TextEncoder().encode(csv), {
      columns: source.front.columns,
      varied: source.front.varied,
    }),
  );
  const { session, problems: found } = assembleSession(source, read);
  return {
    session,
    carries: session.shots.map(({ contender, values }) => [
      contender,
      Math.round((values.carry ?? 0) / yard),
    ]),
    problems: found.map(({ kind, file, line, found: what, cure }) => ({ kind, file, line, what, cure })),
  };
}
