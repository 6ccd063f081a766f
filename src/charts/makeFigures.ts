import type { Session } from '../intake/session.ts';
import { primaryMetrics } from '../prose/answer.ts';
import type { Telling } from '../prose/telling.ts';
import { apartFigure } from './apartFigure.ts';
import type { Figure } from './figure.ts';
import { shotsFigure } from './shotsFigure.ts';

/** Charts that a narrative may refer to, by the name it refers to them with. */
export const chartQuestions: Readonly<Record<string, string>> = {
  apart: 'How far apart?',
  shots: 'All the shots',
};

/** All figures of a report in the order of the page; a second primary metric brings its own. */
export function makeFigures(telling: Telling, session: Session): readonly Figure[] {
  return primaryMetrics(telling.findings).flatMap((metric, index) => {
    const suffix = index === 0 ? '' : `-${metric.id.replace(/_/g, '-')}`;
    return [
      apartFigure(metric, telling, `apart${suffix}`),
      shotsFigure(metric, session, telling, `shots${suffix}`),
    ];
  });
}
