/**
 * Code that no test calls, because something else runs it, where lines are not counted; what it does is tried there. All
 * other files of `src` must be run through by tests line by line (`thresholds` in `vitest.config.ts`).
 */
export const runElsewhere: readonly string[] = [
  // By Astro's build: routes and what only they read. `tests/site/` opens and reads what they write.
  'src/pages/**',
  'src/charts/{errorRateTables,judgedRateTables,mattersTable,summaryTables}.ts',
  'src/site/{aliasPaths,emailPaths,finishReport,frame,givenSite,kitArchives,kitPaths,listPaths,liveSite}.ts',
  'src/site/{noticeResponse,pageBasics,pictureResponse,siteMap,specimens,versionPaths,withdrawnPaths,writeSiteMap}.ts',
  'src/site/brand/{accentSheet,brandFiles,brandRoute}.ts',
  'src/commands/rendering/**',
  // By a reader's browser. `tests/site/` and `tests/commands/desk*.test.ts` use it there.
  'src/desk/script/**',
  'src/kit/copyButtons.ts',
  'src/site/{finishedSite,phoneFolds,unitsSwitch}.ts',
  // By commands as processes of their own, by their workers, and by the server of `dev`. `tests/commands/` starts them.
  'src/commands/*.ts',
  'src/commands/{cli,desk}/**',
  'src/commands/plan/asker.ts',
  'src/site/{codeHash,contentWatch,draftState}.ts',
];
