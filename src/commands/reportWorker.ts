import Tinypool from 'tinypool';
import { diskTrouble } from '../site/diskTrouble.ts';
import { openContent, type OpenContent } from '../site/openContent.ts';
import { diskCache } from '../site/reportCache.ts';
import { siteOfOne } from '../site/siteContent.ts';
import type { Surroundings } from '../site/surroundings.ts';
import { renderReport, type Rendering } from './rendering/renderReport.ts';
import type { WrittenPage } from './rendering/writePages.ts';

/** Where workers find reports, and where they keep what they have worked out. */
export interface ReportPlaces {
  readonly contentDir: string;
  readonly reportFolder: string;
  readonly code: string;
}

/** What is to be done with one report. */
export interface ReportTask {
  readonly slug: string;
  /** How its pages are written; null where it is only worked out, into the cache. */
  readonly pages: ReportPages | null;
}

interface ReportPages {
  readonly rendering: Rendering;
  readonly others: Surroundings;
  /** Of the report as the command has read it. */
  readonly key: string | null;
}

let opened: OpenContent | null = null;

/** The content folder, read once by each worker. */
function content(): OpenContent {
  const { contentDir, reportFolder, code }: ReportPlaces = Tinypool.workerData;
  opened ??= openContent(contentDir, [], { cache: diskCache(reportFolder), code });
  return opened;
}

/** Does one task; returns what was written for the site. */
export default async function work({ slug, pages }: ReportTask): Promise<readonly WrittenPage[]> {
  const { report } = content().load(slug);
  if (pages === null) return [];
  if (report === null || report.key !== pages.key)
    throw new Error('It was changed while the site was built. Build once more.');
  const { contentDir }: ReportPlaces = Tinypool.workerData;
  const site = siteOfOne(content(), report, pages.others);
  try {
    return await renderReport(report, { contentDir, site }, pages.rendering);
  } catch (error) {
    // Of an error only its words come through to the command: what the disk says is put into words here.
    const trouble = diskTrouble(error);
    throw trouble === null ? error : new Error(trouble);
  }
}
