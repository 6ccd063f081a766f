import { expect, test } from 'vitest';
import { readPage } from '../../src/kit/htmlElements.ts';
import { concerned, joinedPages } from '../../src/kit/joinedPages.ts';
import { oneFile } from '../../src/kit/oneFile.ts';

const report = {
  address: '/golf/reports/x/',
  html:
    '<!doctype html><html><head><title>X</title><meta http-equiv="content-security-policy" content="x"></head><body><main id="main"><p id="a">One</p>' +
    '<a href="details/#order">Order</a> <a href="/golf/reports/x/details/#order">Order</a> <a href="/golf/reports/x/details/">All</a> ' +
    '<a href="/golf/reports/y/">Another</a><img src="/x.webp" alt="A net"></main><footer><a href="/golf/about/">About</a></footer></body></html>',
};
const details = (inner: string) => ({
  address: '/golf/reports/x/details/',
  html: `<!doctype html><html><head></head><body><main><h1>Details</h1>${inner}</main></body></html>`,
});

const inner =
  '<div data-details><h2 id="order">Order</h2><!--other units--><p>metres</p><!--/other units-->' +
  '<a href="/golf/reports/x/#a">Back</a> <a href="/golf/reports/x/">Top</a></div>';
const noFiles = { text: () => null, bytes: () => null };

test('details stand at the end of the report', () => {
  expect(joinedPages(report, details(inner)).page.html).toBe(
    report.html.replace(
      '</main>',
      `<section id="details" aria-labelledby="details-heading"><h2 id="details-heading">The details</h2>${inner}</section></main>`,
    ),
  );
});

test('in one file links between the two lead within, and all is found where it stands', () => {
  const { page, within } = joinedPages(report, details(inner));
  expect(oneFile(page, noFiles, 'https://golf.example', within)).toContain(
    '<body><main id="main"><p id="a">One</p>' +
      '<a href="#order">Order</a> <a href="#order">Order</a> <a href="#details">All</a> <a href="https://golf.example/golf/reports/y/">Another</a><span>A net</span>' +
      '<section id="details" aria-labelledby="details-heading"><h2 id="details-heading">The details</h2>' +
      '<div data-details><h2 id="order">Order</h2><a href="#a">Back</a> <a href="#main">Top</a></div></section>' +
      '</main><footer><a href="https://golf.example/golf/about/">About</a></footer></body></html>',
  );
});

test('a page that was read in two parts reads as the whole does', () => {
  const { page } = joinedPages(report, details(inner));
  expect(page).toEqual(readPage(page.html, concerned));
});

test('details without the element to take over are an error', () => {
  expect(() => joinedPages(report, details('<p>None</p>'))).toThrow(
    'The details have no element to take over.',
  );
});
