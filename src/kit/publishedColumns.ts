import { flightModelHeading } from '../intake/modelledColumns.ts';
import type { Session } from '../intake/session.ts';
import type { ShotColumn } from '../intake/shots/shotFile.ts';
import { metricIds } from '../trade/metrics.ts';

/** The columns of `shots.csv`: what the files hold or what follows from it, without what our flight model made. */
export function publishedColumns({ columns }: Session): readonly ShotColumn[] {
  return metricIds.flatMap((id) => columns[id] ?? []).filter(({ heading }) => heading !== flightModelHeading);
}
