import type { PlanAnswers } from '../../planning/planAnswers.ts';
import type { PlanClock } from '../../planning/plannedFiles.ts';
import type { PlanRecorded } from '../../planning/planRecorded.ts';
import { planSurroundings } from '../../planning/planSurroundings.ts';
import { weighPlan } from '../../planning/weighPlan.ts';
import { recordPlan } from '../plan/recordPlan.ts';
import { withContentLock } from '../writing/contentLock.ts';
import { realDisk, type Disk } from '../writing/disk.ts';
import { notWritten } from '../writing/notWritten.ts';

/** Records a plan as `npm run plan` does that is given all its answers. */
export async function planAtDesk(
  contentDir: string,
  answers: PlanAnswers,
  clock: PlanClock,
  disk: Disk = realDisk,
): Promise<PlanRecorded> {
  const surroundings = planSurroundings(contentDir);
  const { decided, troubles } = await weighPlan(answers, surroundings);
  if (decided === null) return { kind: 'undecided', troubles };
  const { shop } = surroundings;
  try {
    return withContentLock(contentDir, disk, () => {
      const recorded = recordPlan({ contentDir, answers, decided, shop, clock, disk, dryRun: false });
      return 'kind' in recorded
        ? { kind: 'refused', refusal: recorded }
        : { kind: 'recorded', slug: recorded.slug };
    });
  } catch (error) {
    return { kind: 'not-written', why: notWritten(contentDir, error) };
  }
}
