import { expect, test } from 'vitest';
import { olderEdition } from '../../src/kit/olderEdition.ts';

const notice = { words: 'As it was, <before> & after.', link: 'As it stands', address: '/reports/a/?x="1"' };

test('a kept edition begins with its notice, and is else as it was', () => {
  const html = '<!doctype html><body><main class="report" id="main"><h1>Title</h1></main></body>';
  expect(olderEdition(html, notice)).toBe(
    '<!doctype html><body><main class="report" id="main">' +
      '<p class="notice"><strong>As it was, &lt;before&gt; &amp; after.</strong> ' +
      '<a href="/reports/a/?x=&quot;1&quot;">As it stands</a></p><h1>Title</h1></main></body>',
  );
});

test('a page without a main part is no edition', () => {
  expect(() => olderEdition('<main id="other"></main>', notice)).toThrow('The edition has no main part.');
});
