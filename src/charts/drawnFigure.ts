import { imageName, type Figure, type FigureHead } from './figure.ts';
import { layouts, type Variant } from './layout.ts';
import type { MadeChart } from './madeChart.ts';
import { renderParts } from './renderParts.ts';

/** A chart at its place on a page, drawn in both widths; of what it was drawn from its words alone are kept. */
export function drawnFigure({ id, chart, about, question: asked }: FigureHead, made: MadeChart): Figure {
  if (made.kind === 'absent')
    return { kind: 'absent', id, chart, about, question: made.question ?? asked, why: made.why };
  const { finding, subject, found, signs, onPage, shows, description, numbers, table } = made.words;
  const question = made.words.question ?? asked;
  // Of a question with a unit of the reader the picture, which is one for all readers, says nothing.
  const name = made.words.question === undefined ? imageName({ question, subject }) : subject;
  const draw = (variant: Variant): string =>
    renderParts({ id, name }, layouts[variant], made.draw(layouts[variant]));
  return {
    kind: 'drawn',
    ...{ id, chart, about, question, finding, subject, found, signs, description, numbers, table },
    ...(onPage === undefined ? {} : { onPage }),
    ...(shows === undefined ? {} : { shows }),
    ...made.counts,
    svg: { wide: draw('wide'), narrow: draw('narrow') },
  };
}
