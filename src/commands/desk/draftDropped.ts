import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Drafted, DroppedFile, Placing } from '../../desk/deskWork.ts';
import { openContentFolder } from '../../site/contentFiles.ts';
import { waitingFiles } from '../../site/contentList.ts';
import { draftFiles } from '../draft/draftFiles.ts';
import { fileNames } from '../draft/fileNames.ts';
import { openPlans } from '../draft/openPlans.ts';
import { listeningTerminal } from './listeningTerminal.ts';

/** Drafts a report of files that came in by a form, by the code of `npm run draft`: it reads them from a disk. */
export function draftDropped(contentDir: string, files: readonly DroppedFile[], placing: Placing): Drafted {
  const aside = mkdtempSync(join(tmpdir(), 'straightface-desk-'));
  try {
    // The names of a form may be paths; these are not.
    const paths = fileNames(files.map(({ name }) => name)).map((name) => join(aside, name));
    for (const [index, { bytes }] of files.entries())
      writeFileSync(paths[index] ?? '', bytes, { flag: 'wx' });
    const drafted = draftPaths(contentDir, paths, placing);
    // Nobody but this code knows the folder in which the files lay meanwhile.
    return { ...drafted, said: drafted.said.replaceAll(join(aside, '/'), '') };
  } finally {
    rmSync(aside, { recursive: true, force: true });
  }
}

/** The same of files that wait in the inbox; a name that does not wait there is passed over. */
export function draftWaiting(contentDir: string, names: readonly string[], placing: Placing): Drafted {
  const waiting = waitingFiles(openContentFolder(contentDir)).filter((name) => names.includes(name));
  if (waiting.length === 0)
    return { ...notDrafted, said: 'None of these files waits in the inbox any more.' };
  return draftPaths(
    contentDir,
    waiting.map((name) => join(contentDir, 'inbox', name)),
    placing,
  );
}

const notDrafted = { slug: null, joinsPlan: false, unsure: [] };

function draftPaths(contentDir: string, paths: readonly string[], { plan, warmUps }: Placing): Drafted {
  const { terminal, said } = listeningTerminal();
  const plans = openPlans(contentDir, 0).map(({ plan: { slug } }) => slug);
  // A name that is no open plan's would be given to a new report.
  if (plan.kind === 'named' && !plans.includes(plan.slug))
    return { ...notDrafted, said: 'This plan has its session already, or is not there any more.' };
  const { slug, unsure = [] } = draftFiles({
    contentDir,
    paths,
    slug: plan.kind === 'named' ? plan.slug : null,
    ofNoPlan: plan.kind === 'none',
    warmUps,
    otherSlug: true,
    dryRun: false,
    json: false,
    terminal,
  });
  return { slug, joinsPlan: slug !== null && plans.includes(slug), unsure, said: said() };
}
