import puppeteer, { type Browser } from 'puppeteer-core';
import { packagedChromium, type Chromium } from './packagedChromium.ts';

const chromiumArguments: readonly string[] = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export interface ChromiumLaunch extends Chromium {
  readonly args: string[];
}

/**
 * How the browser of the tests is started: the one that comes as a package, unless `CHROMIUM` names another.
 *
 * @param dark whether pages are asked for their dark theme
 */
export function chromiumLaunch(dark: boolean): ChromiumLaunch {
  const named = process.env['CHROMIUM'] ?? '';
  const chromium = named === '' ? packagedChromium() : { executablePath: named, env: process.env };
  return {
    ...chromium,
    args: [...chromiumArguments, `--blink-settings=preferredColorScheme=${dark ? 0 : 1}`],
  };
}

/** How long anything in the browser may take, ms: a machine that is busy elsewhere is no fault of the site. */
export const patience = 180_000;

/** Starts the browser; `dark` asks pages for their dark theme. */
export async function launch({ dark = false } = {}): Promise<Browser> {
  return puppeteer.launch({ ...chromiumLaunch(dark), timeout: patience, protocolTimeout: 2 * patience });
}
