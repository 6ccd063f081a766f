import type { APIRoute, GetStaticPaths } from 'astro';
import { exportedPng } from '../../../../site/exportedFiles.ts';
import { exportPaths, type ExportPath } from '../../../../site/kitPaths.ts';

export const getStaticPaths = (() =>
  exportPaths({ dev: import.meta.env.DEV, ending: 'png' })) satisfies GetStaticPaths;

export const GET: APIRoute<ExportPath['props']> = async ({ props: { report, picture } }) => {
  const png = await exportedPng(report, picture);
  return new Response(new Uint8Array(png), { headers: { 'content-type': 'image/png' } });
};
