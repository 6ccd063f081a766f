import type { APIRoute, GetStaticPaths } from 'astro';
import { termsText } from '../../../kit/kitTexts.ts';
import { givingPaths, type ReportPath } from '../../../site/kitPaths.ts';

export const getStaticPaths = (() => givingPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<ReportPath['props']> = ({ props: { report } }) =>
  new Response(termsText(report), { headers: { 'content-type': 'text/plain; charset=utf-8' } });
