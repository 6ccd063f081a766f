import { rasterWidth } from '../kit/exportedSvg.ts';
import { noticePicture } from '../kit/noticePicture.ts';
import { cachedPng } from './rasters.ts';
import type { WithdrawnPath } from './withdrawnPaths.ts';

/** The notice of a withdrawn report as pixels. */
export async function noticeResponse({ report }: WithdrawnPath['props']): Promise<Response> {
  const svg = noticePicture(report);
  if (svg === null) throw new Error(`${report.source.slug} was not withdrawn.`);
  const png = await cachedPng(svg, rasterWidth);
  return new Response(new Uint8Array(png), { headers: { 'content-type': 'image/png' } });
}
