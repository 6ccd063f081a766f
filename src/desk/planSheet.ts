import type { Context } from 'hono';
import { openContentFolder } from '../site/contentFiles.ts';
import { sheetFile } from '../planning/plannedFiles.ts';
import type { Answered, Answering } from './deskSetting.ts';

const fileOf = (slug: string): string => `reports/${slug}/${sheetFile}`;

/** Whether a report has a sheet to hit by. */
export const hasPlanSheet = (contentDir: string, slug: string): boolean =>
  openContentFolder(contentDir).size(fileOf(slug)) !== null;

/** Shows the sheet of a planned test as it lies beside its report: a page of its own, made to be printed. */
export const planSheet =
  ({ contentDir, refuse }: Answering) =>
  (context: Context, slug: string): Answered => {
    const { content } = openContentFolder(contentDir).text(fileOf(slug));
    return content === null
      ? refuse(404)(context, 'This report has no sheet to hit by.')
      : context.html(content);
  };
