/** Whether a process of that number is at work on this machine, whoever started it. */
export function isRunning(process_: number): boolean {
  if (!Number.isInteger(process_) || process_ <= 0) return false;
  try {
    process.kill(process_, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}
