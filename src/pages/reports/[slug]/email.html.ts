import type { APIRoute, GetStaticPaths } from 'astro';
import { emailHtml } from '../../../kit/emailHtml.ts';
import { emailOf, emailPaths } from '../../../site/emailPaths.ts';
import type { ReportPath } from '../../../site/kitPaths.ts';

export const getStaticPaths = (() => emailPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<ReportPath['props']> = ({ props: { report } }) =>
  new Response(emailHtml(emailOf(report)), { headers: { 'content-type': 'text/html; charset=utf-8' } });
