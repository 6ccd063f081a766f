import type { DeskWork } from '../../desk/deskWork.ts';
import { outFolder } from '../../site/folders.ts';
import { localDate, localTime } from '../localDate.ts';
import { buildAtDesk } from './buildAtDesk.ts';
import { draftDropped, draftWaiting } from './draftDropped.ts';
import { planAtDesk } from './planAtDesk.ts';
import { previewAtDesk } from './previewAtDesk.ts';
import { recordAtDesk } from './recordAtDesk.ts';
import { renameReport } from './renameReport.ts';
import { saveText } from './saveText.ts';

/** What the desk asks for, done as the commands do it. */
export const deskWork = (contentDir: string): DeskWork => ({
  save: (file, text, seen) => saveText({ contentDir, file, text, seen }),
  draft: (files, placing) => draftDropped(contentDir, files, placing),
  draftWaiting: (names, placing) => draftWaiting(contentDir, names, placing),
  plan: (answers) => {
    const now = new Date();
    return planAtDesk(contentDir, answers, { today: localDate(now), time: localTime(now) });
  },
  build: buildAtDesk(contentDir, outFolder()),
  rename: (renaming) => renameReport({ contentDir, ...renaming }),
  record: () => {
    const now = new Date();
    return recordAtDesk({ contentDir, outDir: outFolder(), today: localDate(now), time: localTime(now) });
  },
  preview: previewAtDesk(contentDir, outFolder()),
  today: () => localDate(new Date()),
});
