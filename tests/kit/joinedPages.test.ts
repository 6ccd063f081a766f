import { expect, test } from 'vitest';
import { joinedPages } from '../../src/kit/joinedPages.ts';

const report = {
  address: '/golf/reports/x/',
  html:
    '<!doctype html><html><head><title>X</title></head><body><main id="main"><p id="a">One</p>' +
    '<a href="details/#order">Order</a> <a href="/golf/reports/x/details/#order">Order</a> <a href="/golf/reports/x/details/">All</a> ' +
    '<a href="/golf/reports/y/">Another</a></main><footer>End</footer></body></html>',
};
const details = (inner: string) => ({
  address: '/golf/reports/x/details/',
  html: `<!doctype html><html><head></head><body><main><h1>Details</h1>${inner}</main></body></html>`,
});

test('details stand at the end of the report, and links between the two lead within', () => {
  const joined = joinedPages(
    report,
    details(
      '<div data-details><h2 id="order">Order</h2><a href="/golf/reports/x/#a">Back</a> <a href="/golf/reports/x/">Top</a></div>',
    ),
  );
  expect(joined).toBe(
    '<!doctype html><html><head><title>X</title></head><body><main id="main"><p id="a">One</p>' +
      '<a href="#order">Order</a> <a href="#order">Order</a> <a href="#details">All</a> <a href="/golf/reports/y/">Another</a>' +
      '<section id="details" aria-labelledby="details-heading"><h2 id="details-heading">The details</h2>' +
      '<div data-details><h2 id="order">Order</h2><a href="#a">Back</a> <a href="#main">Top</a></div></section>' +
      '</main><footer>End</footer></body></html>',
  );
});

test('details without the element to take over are an error', () => {
  expect(() => joinedPages(report, details('<p>None</p>'))).toThrow(
    'The details have no element to take over.',
  );
});
