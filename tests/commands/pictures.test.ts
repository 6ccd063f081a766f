import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseHTML } from 'linkedom';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { build, foldersFor, hashes } from './builds.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from './contentFolder.ts';

const photograph = (colour: string): Promise<Uint8Array> =>
  sharp({ create: { width: 2400, height: 1800, channels: 3, background: colour } })
    .withExif({ IFD0: { Artist: 'Somebody' } })
    .jpeg()
    .toBuffer();

// Typed with its accent in the letter, and on the disk apart from it, as some systems keep it.
const narrative = '\n![Two heads on a mat](h\u00e9ads.jpg)\n';
const onDisk = 'he\u0301ads.jpg';

test('a picture is published with its report, follows its file, and goes with a report that is withdrawn', async () => {
  const content = contentFolder({
    'shop.yaml': `${shop}address: https://golf.example/tests/\n`,
    'reports/two/report.md': twoHeads() + narrative,
    'reports/two/shots.csv': twoHeadsCsv,
    'reports/gone/report.md':
      twoHeads((front) =>
        front.replace('status: published', 'status: withdrawn\nwithdrawn: {date: 2026-06-25, reason: wrong}'),
      ) + narrative,
    'reports/gone/shots.csv': twoHeadsCsv,
  });
  const file = join(content, 'reports/two', onDisk);
  writeFileSync(file, await photograph('#365'));
  writeFileSync(join(content, 'reports/gone', onDisk), await photograph('#365'));
  const folders = foldersFor(content);
  const first = build(folders);
  expect(first.status, first.said).toBe(0);
  const report = join(folders.out, 'reports/two');
  const address = (): string => {
    const { document } = parseHTML(readFileSync(join(report, 'index.html'), 'utf8'));
    const images = [...document.querySelectorAll('img')];
    expect(images).toHaveLength(1);
    expect(images[0]?.getAttribute('alt')).toBe('Two heads on a mat');
    return images[0]?.getAttribute('src') ?? '';
  };
  const before = address();
  // From the page itself, so under whatever path the site stands.
  expect(before).toMatch(/^pictures\/[0-9a-f]{12}-960\.jpg$/);
  expect(await sharp(readFileSync(join(report, before))).metadata()).toMatchObject({
    format: 'jpeg',
    width: 960,
    height: 720,
  });
  const bytes = readFileSync(join(report, before.replace('.jpg', '.webp')));
  expect(await sharp(bytes).metadata()).toMatchObject({ format: 'webp', width: 960, height: 720 });
  expect(readFileSync(join(report, 'report.html'), 'utf8')).toContain(
    `<img src="data:image/webp;base64,${bytes.toString('base64')}" alt="Two heads on a mat"`,
  );
  expect(existsSync(join(folders.out, 'reports/gone/index.html'))).toBe(true);
  expect(existsSync(join(folders.out, 'reports/gone/pictures'))).toBe(false);
  // Nothing of a picture is there but its editions, without what the camera wrote.
  const jpegs = Object.keys(hashes(folders.out)).filter((path) => /\.jpe?g$/.test(path));
  expect(jpegs).toEqual([`reports/two/${before}`]);
  for (const name of readdirSync(join(report, 'pictures')))
    expect(readFileSync(join(report, 'pictures', name)).includes('Somebody'), name).toBe(false);

  writeFileSync(file, await photograph('#653'));
  expect(build(folders).status).toBe(0);
  expect(address()).not.toBe(before);
  const name = /^pictures\/([0-9a-f]{12})-/.exec(address())?.[1] ?? '';
  expect(readdirSync(join(report, 'pictures')).toSorted()).toEqual(
    ['1440.webp', '480.webp', '960.jpg', '960.webp'].map((edition) => `${name}-${edition}`),
  );
});
