import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Page } from 'puppeteer-core';

export type Theme = 'light' | 'dark';

/** What one of the runners holds to be an error. */
export interface Fault {
  readonly theme: Theme;
  readonly runner: 'axe' | 'htmlcs';
  readonly code: string;
  /** The element, by its selector or by the beginning of its markup. */
  readonly where: string;
}

const packaged = (path: string): string => readFileSync(resolve('node_modules', path), 'utf8');

/** axe reads the same dozen colours anew for each element that lies behind a text: half of its time on a long page. */
const readColoursOnce = `(() => {
  const { prototype } = axe.commons.color.Color;
  const { parseString } = prototype;
  const read = new Map();
  prototype.parseString = function (text) {
    if (!read.has(text)) {
      parseString.call(this, text);
      read.set(text, { r: this.r, g: this.g, b: this.b, alpha: this.alpha });
    }
    return Object.assign(this, read.get(text));
  };
})();`;

const scripts = [
  packaged('axe-core/axe.min.js'),
  readColoursOnce,
  packaged('@pa11y/html_codesniffer/build/HTMLCS.js'),
];

/** The rules that pa11y asks for by WCAG2AA; what is less than serious it holds for no error. */
const byAxe = `async (coloursOnly) => {
  const tags = ['wcag2a', 'wcag21a', 'wcag2aa', 'wcag21aa', 'best-practice'];
  const colours = axe.getRules(['cat.color']).filter((rule) => rule.tags.some((tag) => tags.includes(tag)));
  const { violations } = await axe.run(document, {
    resultTypes: ['violations'],
    runOnly: coloursOnly
      ? { type: 'rule', values: colours.map(({ ruleId }) => ruleId) }
      : { type: 'tag', values: tags },
  });
  return violations
    .filter(({ impact }) => impact !== 'moderate' && impact !== 'minor')
    .flatMap(({ id, nodes }) =>
      (nodes.length === 0 ? [{ target: [] }] : nodes).map(({ target }) => ({ code: id, where: target.join(' ') })),
    );
}`;

const byHtmlcs = `() =>
  new Promise((done, fail) => {
    HTMLCS.process('WCAG2AA', document, (error) => {
      if (error) fail(error);
      else
        done(
          HTMLCS.getMessages()
            .filter(({ type }) => type === HTMLCS.ERROR)
            .map(({ code, element }) => ({ code, where: (element.outerHTML ?? '').slice(0, 120) })),
        );
    });
  })`;

/** Which elements are seen; where they lie also hangs on the fonts that came in time. */
const whatIsSeen = `() =>
  [...document.querySelectorAll('body *')]
    .filter((element) => element.checkVisibility({ visibilityProperty: true, opacityProperty: true }))
    .map((element) => element.localName + (element.getAttribute('role') ?? ''))
    .join()`;

type Found = readonly Pick<Fault, 'code' | 'where'>[];

/**
 * The errors of a loaded page by axe-core and by HTML_CodeSniffer in both themes, as pa11y finds them by the same two in
 * two loads. Both themes show the same elements, which is looked at too; so axe's rules of other things than colours are
 * asked once.
 *
 * @throws where something is seen in one theme only
 */
export async function faultsOf(page: Page): Promise<readonly Fault[]> {
  for (const script of scripts) await page.evaluate(script);
  const found: Fault[] = [];
  const seen: string[] = [];
  for (const theme of ['light', 'dark'] as const) {
    await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: theme }]);
    const [axe, htmlcs, shown] = (await page.evaluate(
      `(async () => [await (${byAxe})(${theme === 'dark'}), await (${byHtmlcs})(), (${whatIsSeen})()])()`,
    )) as readonly [Found, Found, string];
    found.push(...axe.map((one) => ({ theme, runner: 'axe' as const, ...one })));
    found.push(...htmlcs.map((one) => ({ theme, runner: 'htmlcs' as const, ...one })));
    seen.push(shown);
  }
  if (seen[0] !== seen[1]) throw new Error(`${page.url()}: the themes do not show the same elements`);
  return found;
}
