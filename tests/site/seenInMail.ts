import type { Page } from 'puppeteer-core';

/** What there is to see of a mail. */
export interface Seen {
  /** How many px stand over the right edge. */
  readonly over: number;
  /** Smallest letters, px. */
  readonly smallest: number;
  /** Least contrast of letters with what they stand on, and where. */
  readonly faintest: { readonly ratio: number; readonly words: string };
  readonly images: readonly {
    readonly file: string;
    readonly natural: number;
    readonly width: number;
    readonly height: number;
    readonly colour: string;
    readonly underlined: boolean;
  }[];
}

/** What there is to see: of images those that are shown. */
export async function seen(page: Page): Promise<Seen> {
  return page.evaluate(() => {
    const channels = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
    const luminance = (colour: string): number => {
      const [red = 0, green = 0, blue = 0] = channels(colour).map((value) => {
        const part = value / 255;
        return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    };
    const groundOf = (element: Element): string => {
      const { backgroundColor } = getComputedStyle(element);
      const clear = channels(backgroundColor)[3] === 0;
      const { parentElement } = element;
      return clear && parentElement !== null ? groundOf(parentElement) : backgroundColor;
    };
    const ratioOf = (element: Element): number => {
      const [one, other] = [luminance(getComputedStyle(element).color), luminance(groundOf(element))];
      return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    };
    const shown = [...document.querySelectorAll('body *')].filter(
      (element) => element.getClientRects().length > 0 && element.checkVisibility(),
    );
    const worded = shown.filter(
      (element) =>
        element.tagName === 'IMG' ||
        [...element.childNodes].some(
          ({ nodeType, textContent }) => nodeType === 3 && (textContent ?? '').trim() !== '',
        ),
    );
    const faintest = worded
      .map((element) => ({ ratio: ratioOf(element), words: element.textContent ?? '' }))
      .toSorted((x, y) => x.ratio - y.ratio)[0];
    return {
      over: document.documentElement.scrollWidth - document.documentElement.clientWidth,
      smallest: Math.min(...worded.map((element) => parseFloat(getComputedStyle(element).fontSize))),
      faintest: faintest ?? { ratio: 0, words: 'nothing' },
      images: shown
        .filter((element) => element instanceof HTMLImageElement)
        .map((image) => ({
          file: new URL(image.src).pathname.split('/').at(-1) ?? '',
          natural: image.naturalWidth,
          width: image.getBoundingClientRect().width,
          height: image.getBoundingClientRect().height,
          colour: getComputedStyle(image).color,
          underlined: getComputedStyle(image.parentElement ?? image).textDecorationLine !== 'none',
        })),
    };
  });
}
