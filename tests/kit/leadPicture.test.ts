import { describe, expect, test } from 'vitest';
import { cardLayout, type Card } from '../../src/kit/cardLayout.ts';
import { cardWords } from '../../src/kit/cardWords.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import { leadPicture } from '../../src/kit/leadPicture.ts';
import { lowerThird } from '../../src/kit/lowerThird.ts';
import type { Report } from '../../src/kit/report.ts';
import { shareCard } from '../../src/kit/shareCard.ts';
import { leastLookedUp, square, upright } from '../../src/kit/socialForms.ts';
import { leastInVideo, safeEdge, safeSide, video } from '../../src/kit/videoForms.ts';
import { withdrawnWords } from '../../src/prose/english/kit/standing.ts';
import { drawPixels } from '../../src/site/rasters.ts';
import { reportInOtherUnits } from '../../src/site/toldTwice.ts';
import { shown, sizesIn, talkative, textsIn, verbose, withdrawn } from './cardReports.ts';
import { reports } from './content.ts';

const made: Readonly<Record<'square' | 'upright' | 'video' | 'lower-third', (report: Report) => Card>> = {
  square: (report) => cardLayout(report, square),
  upright: (report) => cardLayout(report, upright),
  video: (report) => cardLayout(report, video),
  'lower-third': lowerThird,
};
const forms = ['square', 'upright', 'video', 'lower-third'] as const;

const sizes = { square: [1080, 1080], upright: [1080, 1350], video: [1920, 1080] } as const;

/** Where anything but paper stands, px from the upper left corner; the line along the upper edge apart. */
function marked(svg: string, drawnWidth: number) {
  const { width, height, rgba } = drawPixels(svg, drawnWidth);
  const paper = [250, 248, 242];
  const box = { width, height, left: width, right: 0, top: height, bottom: 0 };
  for (let y = 11; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const at = 4 * (y * width + x);
      if (paper.every((part, index) => rgba[at + index] === part)) continue;
      box.left = Math.min(box.left, x);
      box.right = Math.max(box.right, x);
      box.top = Math.min(box.top, y);
      box.bottom = Math.max(box.bottom, y);
    }
  }
  return box;
}

const twice = shown.flatMap((report) => [
  [report.source.slug, report] as const,
  [`${report.source.slug} in the other units`, reportInOtherUnits(report)] as const,
]);

describe.each(forms)('as %s', (form) => {
  test.each(twice)('%s: everything has room and nothing is cut off', (_, report) => {
    const card = made[form](report);
    expect(card.fits).toBe(true);
    expect(textsIn(card.svg).join(' ')).not.toContain('…');
  });

  test.each(twice)('%s: holds all that it must wherever it goes', (_, report) => {
    const words = cardWords(report);
    const card = made[form](report);
    const texts = textsIn(card.svg);
    const all = texts.join(' ');
    const { stamp, publisher, changes, head, findings, pairs, caution, interest, where } = words;
    expect(texts[0]?.startsWith(stamp === '' ? '' : stamp)).toBe(true);
    for (const told of [publisher, changes, head]) expect(all).toContain(told);
    expect(findings.some((told) => all.includes(told))).toBe(true);
    expect([interest.whole, interest.fewWords].some((told) => all.includes(told))).toBe(true);
    expect(all).toMatch(/\b[Hh]it (?:\d+ \w+|\w+ \d+,) 20\d\d\./);
    expect(all.replaceAll(' ', '')).toContain(where.replaceAll(' ', ''));
    if (pairs[0] !== undefined && card.plan.picture > 0) expect(all).toContain(pairs[0]);
    if (caution?.decides === true)
      expect([caution.whole, caution.brief].some((told) => all.includes(told))).toBe(true);
  });

  test.each(reports.map((report) => [report.source.slug, report] as const))(
    '%s: the caution, ring and bar of a demo report give way to nothing',
    (_, report) => {
      const { caution, pairs } = cardWords(report);
      const { svg } = made[form](report);
      const all = textsIn(svg).join(' ');
      if (caution !== null)
        expect([caution.whole, caution.brief].some((told) => all.includes(told))).toBe(true);
      expect(pairs.length).toBeGreaterThan(0);
      if (form === 'lower-third') return;
      expect(svg).toContain('<circle');
      expect(all).toContain('Ring: best estimate. Bar: likely range');
    },
  );
});

describe('what is shown on phones', () => {
  test.each(reports.map((report) => [report.source.slug, report] as const))(
    '%s: is read at a third of its size',
    (_, report) => {
      for (const form of ['square', 'upright'] as const) {
        const { plan, svg } = made[form](report);
        // 42 of 1080 px are 14 px on a screen of 360 and 16 px on one of 412.
        expect(plan.text).toBeGreaterThanOrEqual(form === 'square' ? 40 : 44);
        expect(plan.finding).toBeGreaterThanOrEqual(plan.text);
        expect(Math.min(...sizesIn(svg))).toBeGreaterThanOrEqual(leastLookedUp);
      }
    },
  );

  test('long names and much to state make letters smaller before anything of an interest is left out', () => {
    const { plan } = cardLayout(talkative, square);
    expect(plan.text).toBeLessThan(42);
    expect(plan.text).toBeGreaterThanOrEqual(28);
    expect(plan.interest).toBe('few-words');
  });
});

test.each([...forms, 'card'] as const)(
  'as %s, more than any picture holds gives way in whole statements, and that there is more is said',
  (form) => {
    const card = form === 'card' ? shareCard(verbose) : made[form](verbose);
    const all = textsIn(card.svg).join(' ');
    expect(card.fits).toBe(true);
    expect(all).toContain('Paid for by the maker of Birch.');
    expect(all).toContain('The report states more of its interest.');
    expect(all).not.toContain('We take a share');
    if (form !== 'lower-third') expect(card.svg).toContain('<circle');
  },
);

describe('what stands in videos', () => {
  test.each(shown.map((report) => [report.source.slug, report] as const))(
    '%s: is inside the safe area and large enough',
    (_, report) => {
      const { svg, plan } = made.video(report);
      const box = marked(svg, 1920);
      expect(box.left).toBeGreaterThanOrEqual(safeSide);
      expect(box.right).toBeLessThan(1920 - safeSide);
      expect(box.top).toBeGreaterThanOrEqual(safeEdge);
      expect(box.bottom).toBeLessThan(1080 - safeEdge);
      expect(Math.min(...sizesIn(svg))).toBeGreaterThanOrEqual(leastInVideo);
      expect(plan.lines).toBe(3);
    },
  );

  test.each(shown.map((report) => [report.source.slug, report] as const))(
    '%s: a band stands on the lower edge of the safe area, as low as its words allow',
    (_, report) => {
      const picture = leadPicture(report, 'lower-third');
      if (picture.kind !== 'clear-png') throw new Error(picture.kind);
      const { on, width, height, svg } = picture;
      expect([on.width, on.height]).toEqual([1920, 1080]);
      expect([on.left, on.left + width]).toEqual([safeSide, 1920 - safeSide]);
      expect(on.top + height).toBe(1080 - safeEdge);
      expect(on.top).toBeGreaterThanOrEqual(safeEdge);
      expect(Math.min(...sizesIn(svg))).toBeGreaterThanOrEqual(leastInVideo);
      const box = marked(svg, width);
      expect([box.width, box.height]).toEqual([width, height]);
      expect(box.right).toBeLessThan(width - 20);
      expect(box.bottom).toBeLessThan(height - 4);
    },
  );

  test('most bands lie in the lower third', () => {
    const low = reports.filter((report) => lowerThird(report).height <= 360 - safeEdge);
    expect(low.length).toBeGreaterThanOrEqual(6);
  });
});

describe('leadPicture', () => {
  const [report] = reports;
  if (report === undefined) throw new Error('no report');

  test.each(Object.entries(sizes))('%s has its size', (form, [width, height]) => {
    const picture = leadPicture(report, form as keyof typeof sizes);
    expect(picture).toMatchObject({ kind: 'png', width, height });
    const pixels = drawPixels(picture.svg, picture.width);
    expect([pixels.width, pixels.height]).toEqual([width, height]);
  });

  test('the print is the first chart with its headline and strip', () => {
    const [lead] = kitOf(report).offered;
    const picture = leadPicture(report, 'print');
    expect(picture).toMatchObject({
      kind: 'outlined-svg',
      widthMm: 180,
      title: lead?.headline,
      width: 768,
    });
    for (const told of [picture.svg, picture.alt]) expect(told).toContain('version 1.0.0');
    expect(picture.alt).toContain(lead?.alt ?? 'none');
    expect(picture.alt).toContain('Invented data.');
  });

  test('of a report that was taken back every card is a notice, with nothing of its finding', () => {
    expect(withdrawn.length).toBeGreaterThan(0);
    for (const one of withdrawn) {
      for (const form of forms) {
        const { svg } = leadPicture(one, form);
        const all = textsIn(svg).join(' ');
        expect(all).toContain(withdrawnWords(one.source));
        expect(svg).not.toContain('<circle');
      }
      expect(() => leadPicture(one, 'print')).toThrow('gives no chart away');
    }
  });
});
