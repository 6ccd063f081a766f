import { describe, expect, test } from 'vitest';
import {
  copies,
  drawingsOf,
  figureCopies,
  inBothUnits,
  inEither,
  otherUnits,
  reportInOtherUnits,
  sharedInBothUnits,
  toldTwice,
} from '../../src/site/toldTwice.ts';
import { reports } from './content.ts';

const [report] = reports;
if (report === undefined) throw new Error('no report');
const own = report.telling.system;
const other = otherUnits(own);

describe('a report in both systems of units', () => {
  test('comes in those of the shop first, and the other way round is itself again', () => {
    const told = toldTwice(report);
    expect(told.map(({ system }) => system)).toEqual([own, other]);
    expect(told[0].figures).toBe(report.figures);
    const back = reportInOtherUnits(reportInOtherUnits(report));
    expect(back.telling).toEqual(report.telling);
    expect(back.figures).toEqual(report.figures);
    expect(back.narrativeHtml).toBe(report.narrativeHtml);
  });

  test('is made once', () => {
    expect(reportInOtherUnits(report)).toBe(reportInOtherUnits(report));
  });

  test('goes with whatever is said of it', () => {
    expect(inEither(own)).toEqual([
      { system: own, of: own },
      { system: other, of: other },
    ]);
    expect(inBothUnits(report, 'ten', 'nine')).toEqual([
      { system: own, of: 'ten' },
      { system: other, of: 'nine' },
    ]);
    expect(copies(toldTwice(report)).map(({ system, of }) => [system, of.telling.system])).toEqual([
      [own, own],
      [other, other],
    ]);
  });
});

describe('drawings of a chart', () => {
  const told = toldTwice(report);
  const drawn = report.figures.flatMap((figure) => (figure.kind === 'drawn' ? [figure.id] : []));

  test('are one where they can be, and else two whose ids differ', () => {
    expect(drawn.length).toBeGreaterThan(3);
    for (const id of drawn) {
      const both = figureCopies(told, id);
      expect(both.map(({ system }) => system)).toEqual([own, other]);
      const all = drawingsOf(both, 'wide');
      const ids = all.flatMap(({ of }) => [...of.matchAll(/\sid="([^"]+)"/g)].map(([, one]) => one));
      expect(ids.length).toBeGreaterThan(0);
      expect(new Set(ids).size, id).toBe(ids.length);
      const differ = new Set(both.map(({ of }) => of.svg.wide)).size > 1;
      if (differ && all.length === 1) expect(all[0]?.of, id).toContain(`data-units="${other}"`);
    }
  });

  test('that cannot be one stand side by side, and nothing in the second takes what is the first’s', () => {
    const [own, other] = figureCopies(told, drawn[0] ?? '');
    if (own === undefined || other === undefined) throw new Error('not drawn');
    const sized = (side: number): string =>
      `<svg viewBox="0 0 ${side} ${side}"><clipPath id="${own.of.id}-wide-clip"/><g clip-path="url(#${own.of.id}-wide-clip)"/></svg>`;
    const copy = (one: typeof own, side: number): typeof own => ({
      ...one,
      of: { ...one.of, svg: { ...one.of.svg, wide: sized(side) } },
    });
    const both = drawingsOf([copy(own, 9), copy(other, 8)], 'wide');
    const clip = `${own.of.id}-wide-${other.system}-clip`;
    expect(both.map(({ of }) => of)).toEqual([
      sized(9),
      `<svg viewBox="0 0 8 8"><clipPath id="${clip}"/><g clip-path="url(#${clip})"/></svg>`,
    ]);
  });

  test('of what was not drawn there are none', () => {
    expect(figureCopies(told, 'hitters-carry')).toEqual([]);
    expect(drawingsOf([], 'wide')).toEqual([]);
    expect(sharedInBothUnits([])).toBeNull();
  });

  test('that cannot be one are the shop’s alone where there is room for one', () => {
    const [a, b] = ['<svg viewBox="0 0 9 9"><g/></svg>', '<svg viewBox="0 0 8 8"><g/></svg>'];
    const both = [
      { system: own, of: a },
      { system: other, of: b },
    ];
    expect(sharedInBothUnits(both)).toBe(a);
    expect(
      sharedInBothUnits([
        { system: own, of: a },
        { system: other, of: a },
      ]),
    ).toBe(a);
  });
});
