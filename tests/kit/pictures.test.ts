import { symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { pictureEditions } from '../../src/intake/authored/picture.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { openContentFolder } from '../../src/site/contentFiles.ts';
import { publishedPicture } from '../../src/site/publishedPicture.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';

/** A picture of one colour with what a camera writes into it: that it lies on its side, and where it was taken. */
const photograph = (width: number, height: number): Promise<Uint8Array> =>
  sharp({ create: { width, height, channels: 3, background: '#356' } })
    .withExif({ IFD0: { Artist: 'Somebody' }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' } })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();

async function loaded(narrative: string, files: Readonly<Record<string, Uint8Array>>) {
  const folder = contentFolder({
    'shop.yaml': shop,
    'reports/two/report.md': `${twoHeads()}\n${narrative}\n`,
    'reports/two/shots.csv': twoHeadsCsv,
  });
  for (const [name, bytes] of Object.entries(files)) writeFileSync(join(folder, 'reports/two', name), bytes);
  return { folder, ...loadSite(folder) };
}

test('a picture beside the report is shown in its published size, with its words and no name of its file', async () => {
  const { reports, problems, folder } = await loaded(
    'Seen: ![Three "wedges" on a mat](wedges%20of%20Ann.jpg "After the test")',
    { 'wedges of Ann.jpg': await photograph(2000, 3200) },
  );
  expect(problems).toEqual([]);
  const [report] = reports;
  const [picture] = report?.source.pictures ?? [];
  if (report === undefined || picture?.kind !== 'shown') throw new Error('no picture');
  const own = `pictures/${picture.name}`;
  expect(report.narrativeHtml).toContain(
    `<picture><source type="image/webp" srcset="${own}-480.webp 480w, ${own}-960.webp 960w, ${own}-1440.webp 1440w" sizes="(min-width: 700px) 660px, calc(100vw - 32px)">` +
      `<img src="${own}-960.jpg" alt="Three &quot;wedges&quot; on a mat" title="After the test" width="1440" height="900" loading="lazy"></picture>`,
  );
  expect(picture.name).toMatch(/^[0-9a-f]{12}$/);
  const content = openContentFolder(folder);
  const { webp, behind } = pictureEditions(picture);
  for (const edition of [...webp, behind]) {
    const bytes = await publishedPicture(content, 'two', picture, edition);
    const { width, height, format, exif, icc, xmp, orientation } = await sharp(bytes).metadata();
    expect({ width, height, format, exif, icc, xmp, orientation }).toEqual({
      width: edition.width,
      height: edition.height,
      format: edition.format === 'jpg' ? 'jpeg' : edition.format,
      exif: undefined,
      icc: undefined,
      xmp: undefined,
      orientation: undefined,
    });
    expect(Buffer.from(bytes).includes('Somebody')).toBe(false);
    expect(Buffer.from(await publishedPicture(content, 'two', picture, edition)).equals(bytes)).toBe(true);
  }
  expect([...webp, behind].map(({ width, height }) => [width, height])).toEqual([
    [480, 300],
    [960, 600],
    [1440, 900],
    [960, 600],
  ]);
});

test('a small picture stays as wide as it is, and one that is not named is not shown', async () => {
  const png = await sharp({ create: { width: 40, height: 30, channels: 3, background: '#356' } })
    .png()
    .toBuffer();
  const { reports } = await loaded('![A mat](./mat.png) ![The same](mat.png)', {
    'mat.png': png,
    'other.png': png,
  });
  expect(reports[0]?.source.pictures).toMatchObject([
    { kind: 'shown', file: 'mat.png', width: 40, height: 30, behind: 'png' },
    { kind: 'not-named', file: 'other.png' },
  ]);
  expect(reports[0]?.narrativeHtml.match(/<img src="pictures\/[0-9a-f]{12}-40\.png"/g)).toHaveLength(2);
  expect(reports[0]?.narrativeHtml.match(/srcset="pictures\/[0-9a-f]{12}-40\.webp 40w"/g)).toHaveLength(2);
});

const place = { file: 'reports/two/report.md', line: 20 };

test.each([
  [
    'a picture that is not there',
    'Seen: ![A mat](matt.png)',
    {
      kind: 'picture-missing',
      column: 16,
      expected: 'a picture matt.png beside report.md',
      found: 'pictures there: film.gif, mat.png',
      cure: 'Did you mean mat.png? Else copy the picture into the folder of the report.',
    },
  ],
  [
    'a file that is none',
    '![A mat](mat.png)',
    {
      kind: 'picture-unreadable',
      column: 10,
      expected: 'a picture as JPEG, PNG, WebP or AVIF',
      found: 'mat.png',
      cure: 'Save the picture as JPEG, or a drawing as PNG, and write the name of that file.',
    },
  ],
  ['a film', '![A swing](film.gif)', { kind: 'picture-unreadable', column: 12, found: 'film.gif' }],
  [
    'an address from the root of the site',
    '![A mat](/pictures/mat.png)',
    {
      kind: 'link-refused',
      column: 10,
      expected: 'the name of a picture that lies beside report.md: pages ask no other host for anything',
      found: '/pictures/mat.png',
      cure: 'Put the picture into the folder of the report and write its name alone, for example bay.jpg.',
    },
  ],
  ['another host', '![A mat](https://other.test/mat.png)', { kind: 'link-refused', column: 10 }],
  ['another folder', '![A mat](../one/mat.png)', { kind: 'link-refused', column: 10 }],
  ['another folder in other letters', '![A mat](..%2Fone%2Fmat.png)', { kind: 'link-refused', column: 10 }],
  ['data', '![A mat](data:image/png;base64,AAAA)', { kind: 'link-refused', column: 10 }],
] as const)('%s is an error with its place', async (_name, narrative, expected) => {
  const { problems } = await loaded(narrative, {
    'mat.png': new TextEncoder().encode('no picture'),
    'film.gif': await sharp({ create: { width: 4, height: 3, channels: 3, background: '#356' } })
      .gif()
      .toBuffer(),
  });
  expect(problems).toMatchObject([{ ...place, severity: 'error', ...expected }]);
});

test('a picture without words, one that is too large, and one that a link brings from elsewhere', async () => {
  const { problems, folder } = await loaded('![](big.jpg)', { 'big.jpg': new Uint8Array(20_000_001) });
  expect(problems).toMatchObject([
    { ...place, kind: 'picture-without-text', found: '![](big.jpg)' },
    {
      ...place,
      kind: 'picture-too-large',
      expected: 'a picture of 20 MB at most',
      found: 'big.jpg',
      cure: 'Save it smaller: the page shows it 1,440 pixels wide at most.',
    },
  ]);
  const outside = join(contentFolder({ 'outside.jpg': await photograph(40, 30) }), 'outside.jpg');
  writeFileSync(join(folder, 'reports/two/report.md'), `${twoHeads()}\n![A mat](linked.jpg)\n`);
  symlinkSync(outside, join(folder, 'reports/two/linked.jpg'));
  expect(loadSite(folder).problems).toMatchObject([{ kind: 'picture-unreadable', found: 'linked.jpg' }]);
});

test('a damaged picture is named', async () => {
  const whole = await photograph(2000, 1500);
  const { reports, folder } = await loaded('![A mat](mat.jpg)', {
    'mat.jpg': whole.slice(0, whole.length / 2),
  });
  const [picture] = reports[0]?.source.pictures ?? [];
  if (picture?.kind !== 'shown') throw new Error('no picture');
  await expect(
    publishedPicture(openContentFolder(folder), 'two', picture, pictureEditions(picture).behind),
  ).rejects.toThrow(
    'reports/two/mat.jpg is damaged and cannot be shown. Save the picture anew, or take it out of the narrative.',
  );
});
