import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { serveFolder } from '../../src/commands/staticServer.ts';
import { launch } from '../site/browser.ts';
import { builtSite } from '../site/builtSite.ts';

/** `npm run picture`: the first screen of a demo report, answer and chart beside each other, for the README. */
const project = resolve(import.meta.dirname, '../..');
const report = 'three-balls-one-iron';
const file = join(project, '.github/report.webp');
const width = 1280;

mkdirSync(join(project, '.cache'), { recursive: true });
const folder = mkdtempSync(join(project, '.cache/picture-'));
try {
  await builtSite(join(project, 'content'), join(folder, 'site'));
  writeFileSync(file, await picture(join(folder, 'site')));
} finally {
  rmSync(folder, { recursive: true, force: true });
}

async function picture(site: string): Promise<Uint8Array> {
  const server = await serveFolder({ folder: site });
  const browser = await launch();
  try {
    const page = await browser.newPage();
    await page.setViewport({ width, height: 1400, deviceScaleFactor: 1.25 });
    await page.goto(`${server.origin}/reports/${report}/`, { waitUntil: 'networkidle0' });
    const height = await page.$eval('.first', (first) => first.getBoundingClientRect().bottom);
    return await page.screenshot({
      type: 'webp',
      quality: 75,
      clip: { x: 0, y: 0, width, height: Math.floor(height) },
    });
  } finally {
    await browser.close();
    await server.close();
  }
}
