import { defineSource, type Source } from '../intake/authored/source.ts';
import type { Shared } from '../intake/authored/shared.ts';
import type { ContentFolder } from '../site/contentFiles.ts';

/** Another report of the same content folder, as far as its answers go. */
export interface OtherReport {
  readonly slug: string;
  /** Null where its answers cannot be used. */
  readonly source: Source | null;
}

/** The other reports of a content folder, by name; their sessions are not read. */
export function otherReports(folder: ContentFolder, slug: string, shared: Shared): readonly OtherReport[] {
  return folder
    .folders('reports')
    .filter((other) => other !== slug)
    .map((other) => {
      const file = `reports/${other}/report.md`;
      const text = folder.text(file).content;
      if (text === null) return { slug: other, source: null };
      return { slug: other, source: defineSource({ slug: other, file, text, files: [], ...shared }).source };
    });
}
