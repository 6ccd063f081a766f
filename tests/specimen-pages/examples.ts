import type { Report } from '../../src/kit/report.ts';
import type { ComponentExamples, Example } from './example.ts';
import * as firstScreen from './examples/firstScreen.ts';
import * as parts from './examples/parts.ts';
import * as sections from './examples/sections.ts';
import * as tables from './examples/tables.ts';

/** One example with the page it has on the specimen site. */
export interface PlacedExample extends Example {
  readonly component: string;
  /** Its page: `/specimens/<component>/<number>/`. */
  readonly number: string;
}

const all: readonly ComponentExamples[] = [
  ...Object.values(firstScreen),
  ...Object.values(tables),
  ...Object.values(parts),
  ...Object.values(sections),
];

/** Every example of every component, made of these reports. */
export function placedExamples(reports: readonly Report[]): readonly PlacedExample[] {
  const find = (slug: string): Report => {
    const report = reports.find(({ source }) => source.slug === slug);
    if (report === undefined) throw new Error(`There is no report ${slug} to make examples of.`);
    return report;
  };
  return all.flatMap(({ component, examples }) =>
    examples(find).map((example, index) => ({ ...example, component, number: String(index + 1) })),
  );
}
