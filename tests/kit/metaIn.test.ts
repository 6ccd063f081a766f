import { expect, test } from 'vitest';
import { metaIn } from '../../src/kit/metaIn.ts';
import { isListed } from '../../src/site/isListed.ts';

const page = (meta: string): string =>
  `<html><head>${meta}</head><body><meta name="robots" content="noindex"></body></html>`;

test('what a head says under a name, however it is written', () => {
  expect(metaIn(page('<meta content="a &amp; b" name=robots>'), 'robots')).toBe('a & b');
  expect(metaIn(page('<meta name="robots" content="one"><meta name="robots" content="two">'), 'robots')).toBe(
    'one',
  );
});

test('nothing of what only its body or a comment holds', () => {
  expect(metaIn(page('<!--<meta name="robots" content="noindex">-->'), 'robots')).toBeNull();
  expect(metaIn(page('<meta name="description" content="robots">'), 'robots')).toBeNull();
});

test('a page that asks searches to pass it over is not listed', () => {
  expect(isListed(page('<meta content="noindex, follow" name="robots">'))).toBe(false);
  expect(isListed(page('<meta name="robots" content="follow">'))).toBe(true);
  expect(isListed(page(''))).toBe(true);
});
