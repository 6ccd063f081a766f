import type { APIRoute, GetStaticPaths } from 'astro';
import { emailBlock } from '../../../kit/emailHtml.ts';
import { emailPaths, type EmailPath } from '../../../site/emailPaths.ts';

export const getStaticPaths = (() => emailPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<EmailPath['props']> = ({ props: { parts } }) =>
  new Response(emailBlock(parts), { headers: { 'content-type': 'text/html; charset=utf-8' } });
