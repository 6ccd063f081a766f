/** A piece of a rendered narrative: HTML, or the place of a chart. */
type NarrativePart =
  | { readonly kind: 'html'; readonly html: string }
  /** The id of a figure of the report. */
  | { readonly kind: 'chart'; readonly chart: string };

/** Marks the place of a chart in the HTML of a narrative; raw HTML is off there, so nobody else can write it. */
export const chartMark = (chart: string): string => `<!--chart ${chart}-->`;

const marks = /<!--chart ([\w-]+)-->/;

/** The HTML of a narrative, parted at the charts that are drawn in it. */
export function narrativeParts(html: string): readonly NarrativePart[] {
  return html
    .split(marks)
    .map((text, index): NarrativePart =>
      index % 2 === 1 ? { kind: 'chart', chart: text } : { kind: 'html', html: text },
    )
    .filter((part) => part.kind === 'chart' || part.html.trim() !== '');
}

/** Ids of the figures that the narrative has drawn in it: the page has each of them once. */
export function chartsInNarrative(html: string): readonly string[] {
  return narrativeParts(html).flatMap((part) => (part.kind === 'chart' ? [part.chart] : []));
}
