import type { APIRoute, GetStaticPaths } from 'astro';
import { emailText } from '../../../kit/emailText.ts';
import { emailOf, emailPaths } from '../../../site/emailPaths.ts';
import type { ReportPath } from '../../../site/kitPaths.ts';

export const getStaticPaths = (() => emailPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<ReportPath['props']> = ({ props: { report } }) =>
  new Response(emailText(emailOf(report)), { headers: { 'content-type': 'text/plain; charset=utf-8' } });
