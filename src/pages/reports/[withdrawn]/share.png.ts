import type { APIRoute, GetStaticPaths } from 'astro';
import { noticeResponse } from '../../../site/noticeResponse.ts';
import { withdrawnPaths, type WithdrawnPath } from '../../../site/withdrawnPaths.ts';

export const getStaticPaths = (() => withdrawnPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<WithdrawnPath['props']> = ({ props }) => noticeResponse(props);
