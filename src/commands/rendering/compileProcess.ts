import { diskTrouble } from '../../site/diskTrouble.ts';
import { compilePages, type Compilation } from './compilePages.ts';

/** What this process answers to the one compilation that it is sent. */
export interface Compiled {
  /** Why nothing was compiled; null where all was. */
  readonly failed: string | null;
}

process.once('message', async (compilation: Compilation) => {
  const compiled = await compile(compilation);
  // Whoever has asked ends this process once it has the answer.
  process.send?.(compiled);
});

// Nobody is left to put in place, or to clear away, what it would write.
process.once('disconnect', () => process.exit());

async function compile(compilation: Compilation): Promise<Compiled> {
  try {
    await compilePages(compilation);
    return { failed: null };
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    return { failed: diskTrouble(error) ?? words };
  }
}
