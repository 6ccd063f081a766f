import type { APIRoute } from 'astro';
import { findingsJsonSchema } from '../kit/publishedFindings.ts';

export const GET: APIRoute = () =>
  new Response(findingsJsonSchema(), { headers: { 'content-type': 'application/schema+json' } });
