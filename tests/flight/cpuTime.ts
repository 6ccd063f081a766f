/** Milliseconds of processor time that work takes, the least of several runs: what else the machine does is not counted. */
export function cpuTime(work: () => void, runs: number): number {
  const times = Array.from({ length: runs }, () => {
    const start = process.cpuUsage();
    work();
    return process.cpuUsage(start).user / 1000;
  });
  return Math.min(...times);
}
