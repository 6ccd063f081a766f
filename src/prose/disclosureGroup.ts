import { listed, uncapitalised } from './words.ts';

/** One line of the list of conditions; null prints "not recorded". */
interface DisclosureItem {
  readonly label: string;
  readonly value: string | null;
}

export interface DisclosureGroup {
  readonly title: string;
  readonly items: readonly DisclosureItem[];
}

/** What is printed where nothing was answered, in the same size as any answer. */
export const notRecorded = 'not recorded';

/** A line as it is written down, with nothing for what was not answered. */
export type DisclosureLine = readonly [label: string, value: string | null | undefined];

/** How many items are answered, and which are not, group by group. */
export function recorded(groups: readonly DisclosureGroup[]): {
  readonly answered: number;
  readonly all: number;
  readonly missing: readonly string[];
} {
  const items = groups.flatMap((group) => group.items);
  const missing = groups.flatMap(({ title, items: own }) => {
    const labels = own.filter(({ value }) => value === null).map(({ label }) => uncapitalised(label));
    return labels.length === 0 ? [] : [{ title, labels: labels.join(', ') }];
  });
  // Several of which the same is missing are named together.
  const together = Map.groupBy(missing, ({ labels }) => labels);
  return {
    answered: items.filter(({ value }) => value !== null).length,
    all: items.length,
    missing: [...together].map(([labels, own]) => `${listed(own.map(({ title }) => title))}: ${labels}`),
  };
}
