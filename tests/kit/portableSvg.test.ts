import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { chartForms, type ChartForm } from '../../src/kit/exportForms.ts';
import { exportedSvg } from '../../src/kit/exportedSvg.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import { pictureForms } from '../../src/kit/pictureForm.ts';
import { replaceTexts } from '../../src/kit/svgTexts.ts';
import { portableSvg } from '../../src/site/portableSvg.ts';
import { launch } from '../site/browser.ts';
import { arialWidth } from './arialAdvances.ts';
import { reports } from './content.ts';

const figures = reports.flatMap((report) => kitOf(report).offered.map(({ figure }) => ({ report, figure })));

const drawnAs = (form: ChartForm): Promise<readonly { readonly name: string; readonly svg: string }[]> =>
  Promise.all(
    figures.map(async ({ report, figure }) => ({
      name: `${report.source.slug}/${figure.id}`,
      svg: await portableSvg(exportedSvg(report, figure, form)),
    })),
  );

const withoutFonts = (svg: string): string => svg.replace(/<style>[^<]*<\/style>/, '');

describe.each(chartForms)('as %s', (form) => {
  test('a drawing holds its fonts, asks for nothing and is small enough to send', async () => {
    for (const { name, svg } of await drawnAs(form)) {
      const faces = [...svg.matchAll(/@font-face\{font-family:'([^']+)';font-weight:(\d+)/g)];
      expect(
        faces.map(([, family, weight]) => `${family} ${weight}`),
        name,
      ).toEqual(['Source Sans 3 400', 'Source Sans 3 600', 'Literata 600']);
      expect(withoutFonts(svg), name).not.toMatch(/url\((?!#)|href="(?!#)|<style|<script/);
      expect(svg.replaceAll(/url\(data:font\/woff2;base64,[A-Za-z0-9+/=]+\)/g, ''), name).not.toContain(
        'url(d',
      );
      expect(svg.length, name).toBeLessThan(60_000);
    }
  });

  test('set in the letters of Arial by a program that passes over fonts and lengths, every line ends inside', () => {
    const outside: string[] = [];
    for (const { report, figure } of figures) {
      const { width } = pictureForms[form];
      replaceTexts(exportedSvg(report, figure, form), (text, whole) => {
        const { place, words, serif, weight } = text;
        if (place === null) throw new Error(words);
        // The headline is tried in the browser: its line has room for a serif a tenth wider.
        const long = serif ? 0 : arialWidth(words, text.size, weight) * place.scale;
        const start = place.x + text.x * place.scale - { start: 0, middle: 0.5, end: 1 }[text.anchor] * long;
        if (start < 0 || start + long > width) outside.push(`${report.source.slug}/${figure.id}: ${words}`);
        return whole;
      });
    }
    expect(outside).toEqual([]);
  });
});

/** A text as the browser sets it, px of its drawing. */
interface Box {
  readonly words: string;
  readonly left: number;
  readonly right: number;
  readonly middle: number;
  readonly size: number;
}

const { resolve } = createRequire(import.meta.url);
const data = (file: string): string =>
  `url(data:font/woff2;base64,${readFileSync(resolve(file)).toString('base64')})`;
const literata = data('@fontsource/literata/files/literata-latin-600-normal.woff2');

/** Letters that take the place of ours: those of the machine, the same far wider, and a heavy serif. */
const standIns = {
  'the only sans of the machine': '',
  'the same a quarter wider': `@font-face{font-family:'Source Sans 3';font-weight:100 900;src:local('Open Sans Regular'),local('OpenSans-Regular'),local('Open Sans');size-adjust:118%}@font-face{font-family:Literata;font-weight:100 900;src:local('Open Sans Regular'),local('OpenSans-Regular'),local('Open Sans');size-adjust:125%}`,
  'a heavy serif': `@font-face{font-family:'Source Sans 3';font-weight:100 900;src:${literata};size-adjust:112%}@font-face{font-family:Literata;font-weight:100 900;src:${literata};size-adjust:112%}`,
};

async function boxesOf(
  page: Page,
  svgs: readonly string[],
  style: string,
): Promise<readonly (readonly Box[])[]> {
  await page.setContent(`<!doctype html><style>${style}</style>${svgs.join('')}`, { waitUntil: 'load' });
  await page.evaluate(() =>
    Promise.all([...document.fonts].map((font) => font.load())).then(() => undefined),
  );
  return page.evaluate(() =>
    [...document.querySelectorAll('svg')].map((svg) => {
      const own = svg.getBoundingClientRect();
      return [...svg.querySelectorAll('text')].map((text) => {
        const { left, right, top, bottom } = text.getBoundingClientRect();
        return {
          words: text.textContent,
          left: left - own.left,
          right: right - own.left,
          middle: (top + bottom) / 2 - own.top,
          size: Number.parseFloat(getComputedStyle(text).fontSize),
        };
      });
    }),
  );
}

/** Texts that leave the drawing, and pairs that lie on one another. */
function faultsOf(boxes: readonly Box[], width: number): readonly string[] {
  const outside = boxes
    .filter(({ left, right }) => left < -0.5 || right > width + 0.5)
    .map(({ words }) => words);
  const over = boxes.flatMap((one, at) =>
    boxes
      .slice(at + 1)
      .filter(
        (other) =>
          Math.abs(one.middle - other.middle) < 0.6 * Math.min(one.size, other.size) &&
          Math.min(one.right, other.right) - Math.max(one.left, other.left) > 1,
      )
      .map((other) => `${one.words} | ${other.words}`),
  );
  return [...outside, ...over];
}

describe('in a browser without our fonts', () => {
  let browser: Awaited<ReturnType<typeof launch>>;
  let page: Page;
  beforeAll(async () => {
    browser = await launch();
    page = await browser.newPage();
  }, 600_000);
  afterAll(() => browser.close());

  test.each(
    chartForms.flatMap((form) =>
      Object.entries(standIns).map(([name, style]) => [form, name, style] as const),
    ),
  )(
    '%s, in %s: no text leaves its drawing or lies on another one',
    async (form, _name, style) => {
      const drawn = await drawnAs(form);
      const boxes = await boxesOf(
        page,
        drawn.map(({ svg }) => withoutFonts(svg)),
        style,
      );
      const { width } = pictureForms[form];
      const faults = boxes.flatMap((own, at) =>
        faultsOf(own, width).map((fault) => `${drawn[at]?.name}: ${fault}`),
      );
      expect(boxes.flat().length).toBeGreaterThan(1000);
      expect(faults).toEqual([]);
    },
    600_000,
  );

  test('it is the lengths that hold them: without these letters of another width leave the drawing', async () => {
    const drawn = await drawnAs('wide');
    const loose = drawn.map(({ svg }) =>
      withoutFonts(svg).replaceAll(/ textLength="[^"]*" lengthAdjust="[^"]*"/g, ''),
    );
    const boxes = await boxesOf(page, loose, standIns['the same a quarter wider']);
    expect(boxes.flatMap((own) => faultsOf(own, pictureForms.wide.width)).length).toBeGreaterThan(20);
  }, 600_000);

  test('with the fonts inside each text is as long in them as it is drawn', async () => {
    const drawn = await drawnAs('wide');
    const [first] = drawn;
    if (first === undefined) throw new Error('no drawing');
    const lengths = /<text textLength="([\d.]+)"/g;
    const wanted = [...first.svg.matchAll(lengths)].map(([, length]) => Number(length));
    const [boxes = []] = await boxesOf(
      page,
      [first.svg.replaceAll(/ textLength="[^"]*" lengthAdjust="[^"]*"/g, '')],
      '',
    );
    expect(boxes).toHaveLength(wanted.length);
    for (const [at, { left, right, words }] of boxes.entries())
      expect(Math.abs(right - left - (wanted[at] ?? 0)), words).toBeLessThan(0.02 * (right - left) + 1);
  }, 600_000);
});
