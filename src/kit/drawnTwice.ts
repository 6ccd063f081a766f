import type { Edit } from './htmlEdits.ts';
import { attribute, placeOf, placeOfAttribute, type Element } from './htmlElements.ts';

/** A drawing for phones that stands at every width, without the wide one beside it. */
export const narrowAlone = '.figure .chart-narrow.alone{display:block}';

const noDrawing =
  '<p>The drawing of so many shots is too large for one file. Its numbers stand below it.</p>';

export interface Drawing {
  readonly once: readonly Edit[];
  readonly inWords: Edit;
  /** Letters. */
  readonly size: number;
}

/** Every drawing that is there twice, as for desks and as for phones. */
export function drawings(elements: readonly Element[]): readonly Drawing[] {
  return elements.flatMap((wide) => {
    const narrow = hasClass(wide, 'chart-wide') ? nextElement(wide) : null;
    if (narrow === null || !hasClass(narrow, 'chart-narrow')) return [];
    const [{ start }, { start: from, end }] = [placeOf(wide), placeOf(narrow)];
    return [
      {
        once: [
          { start, end: from, words: '' },
          { ...placeOfAttribute(narrow, 'class'), words: 'class="chart-narrow alone"' },
        ],
        inWords: { start, end, words: noDrawing },
        size: end - start,
      },
    ];
  });
}

function hasClass(element: Element, name: string): boolean {
  return attribute(element, 'class')?.split(' ').includes(name) ?? false;
}

function nextElement(element: Element): Element | null {
  const siblings = element.parent?.children ?? [];
  return siblings[siblings.indexOf(element) + 1] ?? null;
}
