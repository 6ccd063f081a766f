import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { sharedDrawing } from '../../src/kit/sharedDrawing.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { brokenRules } from '../charts/inspectSvg.ts';

/** A drawing as it is seen in one system: the other's groups gone, its own no longer groups. */
function seenIn(svg: string, system: string): string {
  const { document } = parseHTML(`<html><body>${svg.replaceAll(/<!--.*?-->/g, '')}</body></html>`);
  for (const group of [...document.querySelectorAll('[data-units]')]) {
    if (group.getAttribute('data-units') === system) group.replaceWith(...group.childNodes);
    else group.remove();
  }
  return document.body.innerHTML;
}

const drawing = (inside: string, height = 20): string =>
  `<svg class="chart" height="${height}" aria-labelledby="a-wide-name"><title id="a-wide-name">A</title>${inside}</svg>`;
const rules = '<g stroke="grey">' + '<path d="M0,1L9,1"/>'.repeat(20) + '</g>';
const merged = (own: string, other: string): string | null =>
  sharedDrawing({ mark: 'yards', svg: own }, { mark: 'metres', svg: other });

describe('one drawing for two systems of units', () => {
  test('has once what both have, and the rest marked, the other not shown', () => {
    const [own, other] = ['200', '180'].map((number) => drawing(`${rules}<g><text>${number}</text></g>`));
    expect(merged(own ?? '', other ?? '')).toBe(
      drawing(
        `${rules}<g><g data-units="yards"><text>200</text></g><!--other units--><g data-units="metres" display="none"><text>180</text></g><!--/other units--></g>`,
      ),
    );
  });

  test('keeps neighbours that differ together, and what lies between in its place', () => {
    const inside = (numbers: readonly string[]): string =>
      drawing(`${rules}<g><text>${numbers.join('</text><text>')}</text></g>`);
    const both = merged(inside(['1', '2', 'same', '3']), inside(['4', '5', 'same', '6'])) ?? '';
    expect(both.match(/data-units="yards"/g)).toHaveLength(2);
    expect(both).toContain('<g data-units="yards"><text>1</text><text>2</text></g>');
    expect(both).toContain('</g><!--/other units--><text>same</text><g data-units="yards">');
  });

  test('steps of a scale may be more in one than in the other, or none', () => {
    const inside = (steps: number): string =>
      drawing(`${rules}<g>${Array.from({ length: steps }, (_, at) => `<path d="M${at},0"/>`).join('')}</g>`);
    const both = merged(inside(1), inside(3)) ?? '';
    expect(both).toContain('<path d="M0,0"/><!--other units--><g data-units="metres" display="none">');
    expect(both).not.toContain('data-units="yards"');
    expect(seenIn(both, 'metres')).toBe(seenIn(inside(3), 'metres'));
  });

  test.each([
    ['the size differs', drawing(rules, 20), drawing(rules, 21)],
    ['the name differs', drawing(rules), drawing(rules).replace('>A<', '>B<')],
    [
      'what differs has an id',
      drawing(`${rules}<g id="x"><path d="M1,1"/></g>`),
      drawing(`${rules}<g id="x" fill="red"><path d="M1,1"/></g>`),
    ],
    [
      'little is alike',
      drawing('<text>a long line of words</text>'.repeat(9)),
      drawing('<text>a long line of other words</text>'.repeat(9)),
    ],
  ])('is none where %s', (_, own, other) => {
    expect(merged(own, other)).toBeNull();
  });

  test('of two that are the same it is that one', () => {
    expect(merged(drawing(rules), drawing(rules))).toBe(drawing(rules));
  });
});

describe.each(loadSite('content').reports.map((report) => [report.source.slug, report] as const))(
  '%s',
  (_slug, report) => {
    const others = report.figuresInOtherUnits();
    const { system } = report.telling;
    const other = system === 'yards' ? 'metres' : 'yards';
    const charts = report.figures.flatMap((figure, at) => {
      const copy = others[at];
      return figure.kind === 'drawn' && copy?.kind === 'drawn'
        ? (['wide', 'narrow'] as const).map((variant) => ({
            id: `${figure.id} ${variant}`,
            own: figure.svg[variant],
            copy: copy.svg[variant],
          }))
        : [];
    });

    test('a shared drawing is in either system what that system draws, and keeps the rules of charts', () => {
      let shared = 0;
      for (const { id, own, copy } of charts) {
        const both = sharedDrawing({ mark: system, svg: own }, { mark: other, svg: copy });
        if (both === null) continue;
        shared += 1;
        expect(seenIn(both, system), id).toBe(seenIn(own, system));
        expect(seenIn(both, other), id).toBe(seenIn(copy, other));
        expect(brokenRules(seenIn(both, other)), id).toEqual([]);
      }
      expect(shared).toBeGreaterThanOrEqual(charts.length / 2);
    });

    // Averages are rounded in each system by its own step, and where their words then take another line there are two.
    test('charts of shots are drawn once for both, but where words need another line', () => {
      const ofShots = charts.filter(
        ({ id }) => /^(landing|order|launch-and-spin)/.test(id) || /^shots.* wide$/.test(id),
      );
      expect(ofShots.length).toBeGreaterThan(0);
      for (const { id, own, copy } of ofShots)
        expect(
          sharedDrawing({ mark: system, svg: own }, { mark: other, svg: copy }),
          `${id} is drawn twice`,
        ).not.toBeNull();
    });
  },
);
