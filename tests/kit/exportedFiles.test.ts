import { describe, expect, test } from 'vitest';
import { leadForms } from '../../src/kit/exportForms.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import type { PictureFiles } from '../../src/kit/pictureFiles.ts';
import { exportedPng, exportedSvgFile } from '../../src/site/exportedFiles.ts';
import { printedSvg } from '../../src/site/printedSvg.ts';
import { reports } from './content.ts';
import { internationalText, pngChunks } from './pngChunks.ts';

const [report] = reports;
if (report === undefined) throw new Error('no report');
const [lead] = kitOf(report).offered;
if (lead === undefined) throw new Error('no chart');

const files = (form: PictureFiles['form'], more: Partial<PictureFiles> = {}): PictureFiles => ({
  figure: lead.figure.id,
  form,
  units: report.telling.system,
  name: `${lead.figure.id}-${form}`,
  endings: ['png', 'svg'],
  ...more,
});

/** ISO/IEC 15948, 11.2.2 and 11.3.5.3: width, height; pixels a metre. */
const sizeOf = (
  png: Uint8Array,
): { readonly width: number; readonly height: number; readonly perMetre: number } => {
  const data = (type: string): DataView => {
    const found = pngChunks(png).find((chunk) => chunk.type === type);
    if (found === undefined) throw new Error(`no ${type}`);
    return new DataView(Uint8Array.from(found.data).buffer);
  };
  const header = data('IHDR');
  return { width: header.getUint32(0), height: header.getUint32(4), perMetre: data('pHYs').getUint32(0) };
};

describe('a picture of a report as a file', () => {
  test.each([
    ['wide', 1200],
    ['phone', 720],
    ['square', 1080],
    ['upright', 1080],
    ['video', 1920],
    ['lower-third', 1920],
  ] as const)('%s has %i px across, and what it says goes with it', async (form, width) => {
    const png = await exportedPng(report, files(form));
    const size = sizeOf(png);
    expect(size.width).toBe(width);
    expect(size.perMetre).toBeGreaterThan(72 / 0.0254);
    const texts = new Map(
      pngChunks(png)
        .filter(({ type }) => type === 'iTXt')
        .map(internationalText),
    );
    expect([...texts.values()].join('\n')).toContain('Invented data');
    // What is laid over a film lets it through.
    expect(pngChunks(png).some(({ type }) => type === 'tRNS')).toBe(form === 'lower-third');
  });

  test('for print it is a drawing in millimetres whose letters are shapes, and nothing else', async () => {
    const svg = await exportedSvgFile(report, files('print'));
    expect(svg).toMatch(/^<svg\b[^>]*\swidth="\d+mm"/);
    expect(svg).not.toContain('<text');
    await expect(exportedPng(report, files('print'))).rejects.toThrow(
      `${lead.figure.id}-print is a drawing for print, and has no pixels.`,
    );
  });

  test('in the other units its numbers are others', async () => {
    const other = report.telling.system === 'yards' ? 'metres' : 'yards';
    const [own, told] = await Promise.all(
      [files('wide'), files('wide', { units: other })].map((one) => exportedSvgFile(report, one)),
    );
    expect(own).toContain(report.telling.system);
    expect(told).toContain(other);
    expect(told).not.toContain(` ${report.telling.system}`);
  });

  test('of a chart that was not drawn there is none', async () => {
    await expect(exportedPng(report, files('wide', { figure: 'hitters-carry' }))).rejects.toThrow(
      `${report.source.slug} has no chart hitters-carry in ${report.telling.system}.`,
    );
  });
});

test('a drawing without a size cannot be printed', () => {
  expect(() => printedSvg('<svg viewBox="0 0 9 9"></svg>', 90)).toThrow('The drawing has no size.');
});

test('forms of the first chart are those that were tried', () => {
  expect([...leadForms]).toEqual(['square', 'upright', 'video', 'lower-third', 'print']);
});
