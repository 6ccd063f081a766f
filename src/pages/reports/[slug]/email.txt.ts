import type { APIRoute, GetStaticPaths } from 'astro';
import { emailText } from '../../../kit/emailText.ts';
import { emailPaths, type EmailPath } from '../../../site/emailPaths.ts';

export const getStaticPaths = (() => emailPaths({ dev: import.meta.env.DEV })) satisfies GetStaticPaths;

export const GET: APIRoute<EmailPath['props']> = ({ props: { parts } }) =>
  new Response(emailText(parts), { headers: { 'content-type': 'text/plain; charset=utf-8' } });
