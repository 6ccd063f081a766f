import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { loadSite } from '../../src/site/siteContent.ts';
import { placedExamples } from '../specimen-pages/examples.ts';

const examples = placedExamples(loadSite(inject('triedContent')));
const page = (component: string, number: string): string =>
  readFileSync(join(inject('triedFolder'), 'specimens', component, number, 'index.html'), 'utf8');

/** What no reader of any component must find. */
const neverShown = ['undefined', 'NaN'];

/** Every named example of a page component holds what it promises; other tests take the same pages for the rest. */
describe.each(examples)('$component: $name', ({ component, number, shows, hides = [] }) => {
  const html = /<!--example-->([\s\S]*)<!--\/example-->/.exec(page(component, number))?.[1] ?? '';

  test('shows what it must and nothing that it must not', () => {
    for (const words of shows) expect(html).toContain(words);
    for (const words of [...neverShown, ...hides]) expect(html).not.toContain(words);
    expect(shows.length + hides.length).toBeGreaterThan(0);
  });
});

test('a site that is built for readers holds no specimen', () => {
  expect(readdirSync(inject('siteFolder'))).not.toContain('specimens');
});
