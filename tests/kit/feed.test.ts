import rss from '@astrojs/rss';
import { DOMParser, parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { correctionItems } from '../../src/kit/correctionFeed.ts';
import { reportItems } from '../../src/kit/feed.ts';
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
      guid: 'https://golf.example/reports/old/#replaced',
      date: '2026-06-02',
      description: 'A newer report replaces it: Two heads again.',
      content: null,
      picture: null,
      categories: [],
    },
  ]);
  // Its own entry says so before it says what it found, and leads to the newer one.
  const old = reportItems(reports, absolute).find(({ link }) => link.endsWith('/old/'));
  expect(old?.title).toBe('Replaced: Two heads');
  expect(old?.description).toMatch(/^Replaced by a newer report\. In a test of heads/);
  expect(old?.content).toContain(
    '<a href="https://golf.example/reports/new/">A newer report replaces it: Two heads again.</a>',
  );
});

const script = '<script>alert(1)</script>';
const image = '<img src=x onerror=alert(1)>';
const escaped = '&lt;script&gt;alert(1)&lt;/script&gt;';

// RSS 2.0 (rssboard.org): "Entity-encoded HTML is allowed" in descriptions; readers take titles either way.
test('nothing that a shop wrote is markup in a feed, be it taken for HTML or for plain text', async () => {
  const quoted = (text: string): string => JSON.stringify(text);
  const { reports } = loadSite(
    contentFolder({
      'shop.yaml': shop,
      'reports/shown/report.md': twoHeads((front) =>
        front
          .replace('title: Two heads', `title: ${quoted(`Two ${script} heads ${escaped}`)}`)
          .replace('paid_by: the shop', `paid_by: ${quoted(`a maker ${image}`)}`)
          .replace(
            'status:',
            `corrections: [{date: 2026-06-01, what: ${quoted(script)}, was: ${quoted(image)}, now: 5 yd}]\nstatus:`,
          ),
      ),
      'reports/shown/shots.csv': twoHeadsCsv,
      'reports/gone/report.md': twoHeads((front) =>
        front.replace(
          'status: published',
          `status: withdrawn\nwithdrawn: {date: 2026-06-25, reason: ${quoted(`wrong ${image}`)}}`,
        ),
      ),
      'reports/gone/shots.csv': twoHeadsCsv,
    }),
  );
  const items = [...reportItems(reports, absolute), ...correctionItems(reports, absolute)];
  expect(items).toHaveLength(4);
  const response = await rss({
    title: 'Feed',
    description: 'Feed',
    site: absolute('/'),
    items: items.map(({ title, link, description, date }) => ({
      title,
      link,
      description,
      pubDate: new Date(date),
    })),
  });
  const feed = new DOMParser().parseFromString(await response.text(), 'text/xml');
  const read = [...feed.querySelectorAll('item')].flatMap((item) =>
    ['title', 'description'].map((name) => item.querySelector(name)?.textContent ?? ''),
  );
  expect(read).toHaveLength(8);
  for (const text of read) {
    // Shown as plain text it has no bracket that a second reading could take for a tag; read as HTML it has no element.
    expect(text).not.toMatch(/[<>]/);
    expect(parseHTML(`<!doctype html><html><body>${text}</body></html>`).document.body.children).toHaveLength(
      0,
    );
  }
  const asHtml = read.map(
    (text) => parseHTML(`<!doctype html><html><body>${text}</body></html>`).document.body.textContent,
  );
  expect(asHtml).toContain(`Two ${script} heads ${escaped}`);
  expect(asHtml).toContain(`This report was withdrawn on 25 June 2026. Wrong ${image}.`);
  expect(asHtml).toContain(`${script}. It said: ${image}. It now says: 5 yd. Invented data.`);
  const [whole] = items.flatMap(({ content }) => content ?? []);
  const { document } = parseHTML(`<!doctype html><html><body>${whole}</body></html>`);
  expect(new Set([...document.body.querySelectorAll('*')].map(({ localName }) => localName))).toEqual(
    new Set(['p', 'a', 'img']),
  );
  expect(document.body.textContent).toContain(`Two ${script} heads ${escaped}`);
  expect(document.body.textContent).toContain(`a maker ${image}`);
  expect(asHtml.join(' ')).toContain(`a maker ${image}`);
});
