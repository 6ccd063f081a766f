import type { APIRoute, GetStaticPaths } from 'astro';
import { emailHtml } from '../../../kit/emailHtml.ts';
import { emailPaths, type EmailPath } from '../../../site/emailPaths.ts';

export const getStaticPaths = (() => emailPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<EmailPath['props']> = ({ props: { parts } }) =>
  new Response(emailHtml(parts), { headers: { 'content-type': 'text/html; charset=utf-8' } });
