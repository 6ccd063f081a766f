import { existsSync, mkdirSync } from 'node:fs';
import { resolve } from 'node:path';
import puppeteer, { type Browser } from 'puppeteer-core';

const installed = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

export const chromiumArguments: readonly string[] = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A Chromium: named by `CHROMIUM`, else installed, else the one that comes as a package (Linux). */
export async function chromiumPath(): Promise<string> {
  const named = process.env['CHROMIUM'];
  if (named !== undefined) return named;
  const found =
    process.env['CHROMIUM_FROM_PACKAGE'] === undefined
      ? installed.find((path) => existsSync(path))
      : undefined;
  if (found !== undefined) return found;
  // The package unpacks into the temporary folder and takes whatever `chromium` lies there already.
  const folder = resolve('.cache/chromium');
  mkdirSync(folder, { recursive: true });
  process.env['TMPDIR'] = folder;
  // Only with this does it unpack the libraries that a machine without a browser lacks.
  process.env['AWS_LAMBDA_JS_RUNTIME'] = 'nodejs22.x';
  const { default: packaged } = await import('@sparticuz/chromium');
  return packaged.executablePath();
}

/** Starts the browser; `dark` asks pages for their dark theme. */
export async function launch({ dark = false } = {}): Promise<Browser> {
  return puppeteer.launch({
    executablePath: await chromiumPath(),
    args: [...chromiumArguments, `--blink-settings=preferredColorScheme=${dark ? 0 : 1}`],
  });
}
