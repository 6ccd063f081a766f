import type { Browser } from 'puppeteer-core';
import { faultsOf, type Fault } from '../site/audit.ts';
import { openPage } from '../site/openPage.ts';

/** What is pressed first, and what must then be there, so that it is the page itself and not the answer to a stranger. */
interface Look {
  readonly pressed?: readonly string[];
  readonly there?: string;
}

/** The errors of a page of the desk by both runners in both themes, as the visitor of this browser has it. */
export async function deskAudit(
  browser: Browser,
  address: string,
  { pressed = [], there }: Look,
): Promise<readonly Fault[]> {
  const page = await openPage(browser, address, { width: 1280, height: 1024 });
  for (const selector of pressed) await page.click(selector);
  if (there !== undefined) await page.waitForSelector(there, { visible: true });
  const faults = await faultsOf(page);
  await page.close();
  return faults;
}
