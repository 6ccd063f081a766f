import type { APIRoute } from 'astro';
import { hrefIn } from '../site/href.ts';
import { searchIndex } from '../site/searchIndex.ts';
import { siteContent } from 'virtual:straightface/site';
import { shownReports } from '../site/siteContent.ts';

export const GET: APIRoute = () => {
  const reports = shownReports(siteContent({ fresh: import.meta.env.DEV }), { drafts: import.meta.env.DEV });
  return Response.json(searchIndex(reports, hrefIn(import.meta.env.BASE_URL)));
};
