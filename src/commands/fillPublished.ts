import { join } from 'node:path';
import { editReport } from '../intake/edits/editAnswers.ts';
import type { ContentFolder } from '../site/contentFiles.ts';
import type { Disk } from './writing/disk.ts';
import { prepareReplacement } from './writing/wholeFile.ts';

/**
 * Writes the day of publication into reports that have none, under their status: pages and feeds would else say that it
 * is not recorded. Gives what to say of each.
 *
 * @param today ISO 8601
 */
export function fillPublished(
  folder: ContentFolder,
  slugs: readonly string[],
  { today, disk }: { readonly today: string; readonly disk: Disk },
): readonly string[] {
  return slugs.flatMap((slug) => {
    const file = `reports/${slug}/report.md`;
    const { content: text, problems } = folder.text(file);
    // Written back, a text in another encoding would be another text.
    const edited =
      text === null || problems.length > 0
        ? null
        : editReport(text, [{ path: ['published'], to: today, after: 'status' }]);
    if (edited === null || 'refused' in edited)
      return [`${slug}: add "published: ${today}" to report.md, the day of publication`];
    const prepared = prepareReplacement(disk, join(folder.root, file), edited.text);
    try {
      prepared.put();
    } finally {
      prepared.discard();
    }
    return [`${slug}: "published: ${today}" written into report.md`];
  });
}
