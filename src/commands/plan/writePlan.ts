import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** What became of a plan; `failed` says why in the words of the system. */
export type PlanWritten = 'written' | 'taken' | { readonly failed: string };

/**
 * Writes a new folder `reports/<slug>/` with the files, then the ledger. Nothing is left of it where the folder is
 * there already, or where the disk refuses.
 */
export function writePlan(
  contentDir: string,
  slug: string,
  files: Readonly<Record<string, string>>,
  ledger: { readonly file: string; readonly text: string },
): PlanWritten {
  const folder = join(contentDir, 'reports', slug);
  try {
    mkdirSync(dirname(folder), { recursive: true });
    mkdirSync(folder);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    return code === 'EEXIST' ? 'taken' : { failed: words(error) };
  }
  try {
    for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text, { flag: 'wx' });
    writeFileSync(join(contentDir, ledger.file), ledger.text);
  } catch (error) {
    rmSync(folder, { recursive: true, force: true });
    return { failed: words(error) };
  }
  return 'written';
}

const words = (error: unknown): string => (error instanceof Error ? error.message : String(error));
