import { formNames, narrativeForms } from '../prose/narrativeForms.ts';
import type { NarrativeCharts } from '../prose/narrativeValues.ts';
import { resolveReference, valueText } from '../prose/references.ts';
import type { Telling } from '../prose/telling.ts';
import { metrics } from '../trade/metrics.ts';

/** Something that a narrative can name, and what it then says. */
interface MenuEntry {
  /** As it is typed: `{{ mean carry alder }}`. */
  readonly typed: string;
  readonly prints: string;
}

interface MenuPart {
  readonly heading: string;
  readonly entries: readonly MenuEntry[];
}

/** Forms that are offered for every measured metric; the others for the main measures only. */
const forEveryMetric: readonly string[] = ['mean'];

/** The values and charts that a narrative can name, metric by metric, the main measures first. */
export function narrativeMenu(telling: Telling, charts: NarrativeCharts): readonly MenuPart[] {
  const { findings } = telling;
  const names = findings.contenders.map(({ id }) => id);
  const main = findings.metrics.filter(({ role }) => role !== 'exploratory');
  const others = findings.metrics.filter(({ role }) => role === 'exploratory');
  const entry = (words: readonly string[]): readonly MenuEntry[] => {
    const prints = valueText(resolveReference(words, telling, Object.keys(charts)));
    return prints === '' ? [] : [{ typed: `{{ ${words.join(' ')} }}`, prints }];
  };
  const parts = [...main, ...others].map(({ id, role, pairs }): MenuPart => ({
    heading: metrics[id].name,
    entries: formNames
      .filter((form) => role !== 'exploratory' || forEveryMetric.includes(form))
      .flatMap((form) => {
        const takes: readonly string[] = narrativeForms[form].takes;
        if (!takes.includes('METRIC')) return [];
        if (takes.filter((part) => part === 'NAME').length === 1)
          return names.flatMap((name) => entry([form, id, name]));
        return pairs.flatMap(({ a, b }) => entry([form, id, a, b]));
      }),
  }));
  const counts = { heading: 'how many shots', entries: names.flatMap((name) => entry(['shots', name])) };
  const drawn = {
    heading: 'charts',
    entries: Object.entries(charts).map(([id, { title }]) => ({ typed: `{{ chart ${id} }}`, prints: title })),
  };
  return [...parts, counts, drawn].filter(({ entries }) => entries.length > 0);
}
