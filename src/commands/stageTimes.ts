export type StageTime = readonly [stage: string, milliseconds: number];

/** How long each stage of a build took, in the order in which they began. */
export interface StageTimes {
  readonly time: <Result>(stage: string, work: () => Result | Promise<Result>) => Promise<Result>;
  /** Milliseconds of each stage so far. */
  readonly stages: () => readonly StageTime[];
}

/** @param now a clock in milliseconds */
export function stageTimes(now: () => number): StageTimes {
  const stages: StageTime[] = [];
  return {
    time: async (stage, work) => {
      const start = now();
      try {
        return await work();
      } finally {
        stages.push([stage, now() - start]);
      }
    },
    stages: () => [...stages],
  };
}

/** `reading 0.4 s, pages 12.0 s` */
export function stagesInWords(stages: readonly StageTime[]): string {
  return stages.map(([stage, time]) => `${stage} ${(time / 1000).toFixed(1)} s`).join(', ');
}
