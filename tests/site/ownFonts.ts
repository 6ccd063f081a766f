import type { Page } from 'puppeteer-core';

/**
 * Has a page set in the fonts of the site, whose files come by the first painting or not at all (`font-display:
 * optional`): on a busy machine a measured height would be that of whatever font the system has.
 */
export async function useOwnFonts(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const rules = [...document.styleSheets].flatMap(({ cssRules }) => [...cssRules]);
    const faces = rules.filter((rule) => rule instanceof CSSFontFaceRule && /url\(/.test(rule.cssText));
    for (const { style } of faces as CSSFontFaceRule[]) {
      const face = new FontFace(
        style.getPropertyValue('font-family').replaceAll(/["']/g, ''),
        style.getPropertyValue('src'),
        { weight: style.getPropertyValue('font-weight') },
      );
      document.fonts.add(await face.load());
    }
    await document.fonts.ready;
  });
}
