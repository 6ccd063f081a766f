import type { Contender } from '../intake/authored/contender.ts';
import type { Session } from '../intake/session.ts';
import { primaryMetrics } from '../prose/answer.ts';
import type { Telling } from '../prose/telling.ts';
import { apartFigure } from './apartFigure.ts';
import { deliveryFigure } from './deliveryFigure.ts';
import type { Figure } from './figure.ts';
import { hittersFigure } from './hittersFigure.ts';
import { landingFigure } from './landingFigure.ts';
import { launchFigure } from './launchFigure.ts';
import { luckFigure } from './luckFigure.ts';
import { orderFigure } from './orderFigure.ts';
import { priceFigure } from './priceFigure.ts';
import { shotsFigure } from './shotsFigure.ts';
import { spreadFigure } from './spreadFigure.ts';
import { withAndWithoutFigure } from './withAndWithoutFigure.ts';
import { yardsFigure } from './yardsFigure.ts';

/**
 * All figures of a report in the order of the page; a second primary metric brings its own two. A figure without its
 * data is among them and says why.
 */
export function makeFigures(
  telling: Telling,
  session: Session,
  contenders: readonly Contender[],
): readonly Figure[] {
  const primaries = primaryMetrics(telling.findings);
  const [first] = primaries;
  const lead = primaries.flatMap((metric, index) => {
    const suffix = index === 0 ? '' : `-${metric.id.replace(/_/g, '-')}`;
    return [
      apartFigure(metric, telling, { id: `apart${suffix}`, named: primaries.length > 1 }),
      shotsFigure(metric, session, telling, { id: `shots${suffix}`, named: primaries.length > 1 }),
    ];
  });
  if (first === undefined) return lead;
  return [
    ...lead,
    landingFigure(session, telling),
    deliveryFigure(telling),
    orderFigure(first, session, telling),
    yardsFigure(first, telling),
    launchFigure(session, telling),
    hittersFigure(first, telling),
    luckFigure(first, telling),
    spreadFigure(telling),
    withAndWithoutFigure(first, session, telling),
    priceFigure(first, contenders, telling),
  ];
}
