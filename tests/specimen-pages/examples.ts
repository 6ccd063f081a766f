import type { Example, Examples } from '../../src/components/example.ts';
import type { SiteContent } from '../../src/site/siteContent.ts';

/** One example with the page it has on the specimen site. */
export interface PlacedExample extends Example {
  /** File name of the component without its ending. */
  readonly component: string;
  /** Its page: `/specimens/<component>/<number>/`. */
  readonly number: string;
}

/** Beside its component, as `Answer.example.ts` beside `Answer.astro`, so nothing has to be listed. */
const all = import.meta.glob<Examples>('../../src/components/*.example.ts', {
  eager: true,
  import: 'examples',
});

/** Every example of every component, made of the site of `triedContent.ts`. */
export function placedExamples({
  reports,
  brand,
}: Pick<SiteContent, 'reports' | 'brand'>): readonly PlacedExample[] {
  const report = (slug: string) => {
    const found = reports.find(({ source }) => source.slug === slug);
    if (found === undefined) throw new Error(`There is no report ${slug} to make examples of.`);
    return found;
  };
  return Object.entries(all).flatMap(([path, examples]) =>
    examples({ report, brand }).map((example, index) => ({
      ...example,
      component: componentAt(path),
      number: String(index + 1),
    })),
  );
}

/** `Answer` of the path of `Answer.astro` or `Answer.example.ts`. */
export const componentAt = (path: string): string => path.replace(/^.*\//, '').replace(/\..*$/, '');
