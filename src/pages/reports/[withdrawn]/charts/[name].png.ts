import type { APIRoute, GetStaticPaths } from 'astro';
import { noticeResponse } from '../../../../site/noticeResponse.ts';
import { withdrawnPictures, type WithdrawnPath } from '../../../../site/withdrawnPaths.ts';

export const getStaticPaths = (() =>
  withdrawnPictures({ dev: import.meta.env.DEV }, 'png')) satisfies GetStaticPaths;

export const GET: APIRoute<WithdrawnPath['props']> = ({ props }) => noticeResponse(props);
