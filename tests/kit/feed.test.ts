import { expect, test } from 'vitest';
import { correctionItems } from '../../src/kit/feed.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';

const absolute = (path: string): string => `https://golf.example${path}`;

test('a report that was replaced is in the feed of corrections from the day of the newer one', () => {
  const { reports } = loadSite(
    contentFolder({
      'shop.yaml': shop,
      'reports/old/report.md': twoHeads((front) =>
        front.replace('status: published', 'status: superseded\nsuperseded_by: new'),
      ),
      'reports/old/shots.csv': twoHeadsCsv,
      'reports/new/report.md': twoHeads((front) =>
        front.replace('title: Two heads', 'title: Two heads again').replace('2026-05-02', '2026-06-02'),
      ),
      'reports/new/shots.csv': twoHeadsCsv,
    }),
  );
  expect(reports).toHaveLength(2);
  expect(correctionItems(reports, absolute)).toEqual([
    {
      title: 'Replaced: Two heads',
      link: 'https://golf.example/reports/old/#replaced',
      date: '2026-06-02',
      description: 'A newer report replaces it: Two heads again.',
    },
  ]);
});
