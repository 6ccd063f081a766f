import type { APIRoute, GetStaticPaths } from 'astro';
import { cardWidth, shareCard } from '../../../kit/shareCard.ts';
import { givingPaths, type ReportPath } from '../../../site/kitPaths.ts';
import { cachedPng } from '../../../site/rasters.ts';

export const getStaticPaths = (() => givingPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<ReportPath['props']> = async ({ props: { report } }) => {
  const png = await cachedPng(shareCard(report).svg, cardWidth);
  return new Response(new Uint8Array(png), { headers: { 'content-type': 'image/png' } });
};
