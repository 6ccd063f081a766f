import type { APIRoute } from 'astro';
import { absoluteAddress } from '../kit/absoluteAddress.ts';
import { siteContent } from 'virtual:straightface/site';

export const GET: APIRoute = () => {
  const absolute = absoluteAddress(siteContent({ fresh: import.meta.env.DEV }).shop);
  const sitemap = absolute === null ? '' : `Sitemap: ${absolute('/sitemap-index.xml')}\n`;
  return new Response(`User-agent: *\nAllow: /\n${sitemap}`, { headers: { 'content-type': 'text/plain' } });
};
