import { expect, test } from 'vitest';
import { checkedSite } from '../../src/site/checkedSite.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';

test('a file in the inbox that is no CSV is told, with what to do; what systems leave there is not', () => {
  const root = contentFolder({
    'shop.yaml': shop,
    'reports/two-heads/report.md': twoHeads(),
    'reports/two-heads/shots.csv': twoHeadsCsv,
    'inbox/session.csv': twoHeadsCsv,
    'inbox/session.xlsx': 'x',
    'inbox/screen.PNG': 'x',
    'inbox/letter.odt': 'x',
    'inbox/Thumbs.db': 'x',
  });
  const told = checkedSite(root)
    .problems.filter(({ kind }) => kind === 'inbox-not-csv')
    .map(({ file, severity, found, cure }) => `${severity} ${file}: ${found}. ${cure}`);
  expect(told).toEqual([
    'warning inbox/letter.odt: another file. Export the session as CSV, and take this file out of the inbox.',
    'warning inbox/screen.PNG: a picture. Export the session from the monitor as CSV: no numbers are read from pictures. A photo for readers goes beside report.md, named in the narrative: ![what it shows](photo.jpg).',
    'warning inbox/session.xlsx: a spreadsheet. Open it in the spreadsheet program, save it as CSV (UTF-8), and put that file into the inbox in its place.',
  ]);
});
