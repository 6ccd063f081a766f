import { compileAside } from './compileAside.ts';
import { compiledPages, pagesKey, type CompiledPages, type PagesToCompile } from './compiledPages.ts';

/** Compiles pages while something else is done. */
export interface PagesCompiler {
  /** As `compiledPages`; begun at the first call for the same pages, so that nobody need wait for what is under way. */
  readonly pages: (wanted: PagesToCompile) => Promise<CompiledPages>;
  /** Gives up what is under way and leaves nothing of it behind. */
  readonly close: () => Promise<void>;
}

export function pagesCompiler(compile = compileAside): PagesCompiler {
  const closing = new AbortController();
  const begun = new Map<string, Promise<CompiledPages>>();
  return {
    pages: (wanted) => {
      const key = pagesKey(wanted);
      const known = begun.get(key);
      if (known !== undefined) return known;
      const pages = compiledPages(wanted, (compilation) => compile(compilation, closing.signal));
      begun.set(key, pages);
      // Whoever asks again is told of a failure; where nobody does, the site was not going to be built.
      pages.catch(() => {});
      return pages;
    },
    close: async () => {
      closing.abort();
      await Promise.allSettled(begun.values());
    },
  };
}
