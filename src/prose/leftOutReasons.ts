import type { Session } from '../intake/session.ts';

/** Why shots were left out, and how many for each reason. */
interface LeftOutReason {
  readonly shots: number;
  readonly rule: string;
  readonly reason: string;
}

/** Each reason once, in the order of the shots. */
export function leftOutReasons({ shots }: Pick<Session, 'shots'>): readonly LeftOutReason[] {
  const excluded = shots.flatMap(({ excluded: why }) => why ?? []);
  const byReason = Map.groupBy(excluded, ({ rule, reason }) => JSON.stringify([rule, reason]));
  return [...byReason.values()].flatMap((own) =>
    own.slice(0, 1).map(({ rule, reason }) => ({ shots: own.length, rule, reason })),
  );
}
