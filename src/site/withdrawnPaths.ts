import { figuresToOffer } from '../kit/kitOf.ts';
import { pictureFiles } from '../kit/pictureFiles.ts';
import type { Report } from '../kit/report.ts';
import { sayWithdrawn, type WithdrawnWords } from '../prose/english/kit/withdrawn.ts';
import { siteContent } from 'virtual:straightface/site';
import { pageKey, type PageKey } from './cacheKey.ts';
import { shownReports } from './siteContent.ts';

/** Something that a withdrawn report leaves at its address: a notice. */
export interface WithdrawnPath extends PageKey {
  readonly params: { readonly withdrawn: string; readonly name?: string };
  readonly props: { readonly report: Report; readonly words: WithdrawnWords };
}

/** Paths of what each withdrawn report leaves one of. */
export function withdrawnPaths({ dev }: { readonly dev: boolean }): WithdrawnPath[] {
  return shownReports(siteContent({ fresh: dev }), { drafts: dev }).flatMap((report) => {
    const words = sayWithdrawn(report.source);
    return words === null
      ? []
      : [{ params: { withdrawn: report.source.slug }, props: { report, words }, ...pageKey([report]) }];
  });
}

/** The frames of the charts that it gave away. */
export function withdrawnFrames(of: { readonly dev: boolean }): WithdrawnPath[] {
  return named(of, (report) => figuresToOffer(report).map(({ id }) => id));
}

/** The pictures that it gave away, which others show from its address. */
export function withdrawnPictures(of: { readonly dev: boolean }, ending: 'png' | 'svg'): WithdrawnPath[] {
  return named(of, (report) =>
    figuresToOffer(report).flatMap((figure) =>
      pictureFiles(report, figure).flatMap(({ name, endings }) => (endings.includes(ending) ? [name] : [])),
    ),
  );
}

function named(
  of: { readonly dev: boolean },
  namesOf: (report: Report) => readonly string[],
): WithdrawnPath[] {
  return withdrawnPaths(of).flatMap((path) =>
    namesOf(path.props.report).map((name) => ({ ...path, params: { ...path.params, name } })),
  );
}
