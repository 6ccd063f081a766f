/** All folders that decide over where a command may write; absolute. */
export interface Places {
  readonly contentDir: string;
  readonly outDir: string;
  readonly cacheDir: string;
  readonly projectFolder: string;
  readonly home: string;
  readonly workingFolder: string;
}

/** Whether a command may write into a folder. */
export type FolderDecision =
  | {
      readonly kind: 'usable';
      /** Where it is, links followed. */
      readonly folder: string;
    }
  | {
      readonly kind: 'refused';
      /** What stands there and what to do, in one sentence. */
      readonly sentence: string;
    };

/** Folders of the project that people and packages write. */
export const sourceFolders = [
  'src',
  'public',
  'tests',
  'node_modules',
  '.git',
  '.github',
  '.ci',
  '.astro',
] as const;

/** What a cache folder holds that is ours, by name. */
export const cacheEntries =
  /^(?:reports|rasters|editions|fonts|astro|dev|building|pages\.list|new-.*|\.straightface-cache)$/;
