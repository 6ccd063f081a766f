import type { Browser, BrowserContext, Page } from 'puppeteer-core';
import { patience } from './browser.ts';
import { useOwnFonts } from './ownFonts.ts';

/** How a page is looked at. */
export interface Screen {
  readonly width: number;
  readonly height?: number;
  readonly script?: boolean;
}

/** A page of the site in a tab of its own, loaded and set in the site's fonts; the caller closes it. */
export async function openPage(
  browser: Browser | BrowserContext,
  address: string,
  { width, height = 900, script = true }: Screen,
): Promise<Page> {
  const page = await browser.newPage();
  page.setDefaultTimeout(patience);
  await page.setJavaScriptEnabled(script);
  await page.setViewport({ width, height });
  await page.goto(address, { waitUntil: 'load' });
  await useOwnFonts(page);
  return page;
}
