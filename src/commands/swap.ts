import { cpSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';

const retired = (outDir: string): string => `${outDir}.old`;

/** Puts back the site that a build killed between its two renames has left aside. */
export function recover(outDir: string): void {
  if (!existsSync(outDir) && existsSync(retired(outDir))) renameSync(retired(outDir), outDir);
}

/**
 * Replaces the site in `outDir` by the freshly built one in `built` in two renames, so that a reader or a killed
 * process never sees half a site.
 */
export function swap(built: string, outDir: string): void {
  mkdirSync(dirname(outDir), { recursive: true });
  const near = besides(built, outDir);
  rmSync(retired(outDir), { recursive: true, force: true });
  if (existsSync(outDir)) renameSync(outDir, retired(outDir));
  renameSync(near, outDir);
  rmSync(retired(outDir), { recursive: true, force: true });
}

/** The built folder on the same file system as `outDir`: renames do not cross file systems. */
function besides(built: string, outDir: string): string {
  const near = `${outDir}.new`;
  rmSync(near, { recursive: true, force: true });
  try {
    renameSync(built, near);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EXDEV')) throw error;
    cpSync(built, near, { recursive: true });
    rmSync(built, { recursive: true, force: true });
  }
  return near;
}
