import type { APIRoute, GetStaticPaths } from 'astro';
import { noticePicture } from '../../../../kit/noticePicture.ts';
import { withdrawnPictures, type WithdrawnPath } from '../../../../site/withdrawnPaths.ts';

export const getStaticPaths = (() =>
  withdrawnPictures({ dev: import.meta.env.DEV }, 'svg')) satisfies GetStaticPaths;

export const GET: APIRoute<WithdrawnPath['props']> = ({ props: { report } }) =>
  new Response(noticePicture(report), { headers: { 'content-type': 'image/svg+xml' } });
