import type { ElementHandle, Page } from 'puppeteer-core';
import { patience } from '../site/browser.ts';

/** A way in which a person uses a page. */
export interface Hand {
  /** Presses a button or follows a link, and waits for the page that comes. */
  readonly press: (selector: string, timeout?: number) => Promise<void>;
  /** Unfolds something, or presses what leads to no other page. */
  readonly open: (selector: string) => Promise<void>;
  /** Goes to a control and types. */
  readonly type: (selector: string, text: string) => Promise<void>;
  /** Chooses: the first of some choices, or a box to tick. */
  readonly choose: (selector: string) => Promise<void>;
  /** Gives a file to the desk's front page. */
  readonly giveFile: (path: string, text: string) => Promise<void>;
}

/** A person without a pointer: from control to control by one key, then Enter, Space or letters. */
export function keyboard(page: Page): Hand {
  const tabTo = async (selector: string): Promise<void> => {
    for (let tries = 0; tries < 600; tries += 1) {
      await page.keyboard.press('Tab');
      if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) === true, selector)) return;
    }
    throw new Error(`No key leads to ${selector} on ${page.url()}`);
  };
  const key = async (selector: string, name: 'Enter' | 'Space'): Promise<void> => {
    await tabTo(selector);
    await page.keyboard.press(name);
  };
  return {
    press: async (selector, timeout = patience) => {
      await tabTo(selector);
      await Promise.all([
        page.waitForNavigation({ waitUntil: 'load', timeout }),
        page.keyboard.press('Enter'),
      ]);
    },
    open: (selector) => key(selector, 'Enter'),
    type: async (selector, text) => {
      await tabTo(selector);
      await page.keyboard.type(text);
    },
    choose: (selector) => key(selector, 'Space'),
    giveFile: async (path) => {
      await tabTo('#files');
      const chooser = page.waitForFileChooser({ timeout: patience });
      // Its dialog is only caught once the browser knows that somebody waits for it.
      await page.evaluate(() => document.activeElement?.id);
      await page.keyboard.press('Enter');
      await (await chooser).accept([path]);
    },
  };
}

/** A person with a pointer, who drops the file anywhere on the page. */
export function mouse(page: Page): Hand {
  return {
    ...pointing(page),
    giveFile: async (path, text) => {
      await page.evaluate(
        (name, csv) => {
          const dataTransfer = new DataTransfer();
          dataTransfer.items.add(new File([csv], name, { type: 'text/csv' }));
          document
            .querySelector('h1')
            ?.dispatchEvent(new DragEvent('drop', { bubbles: true, cancelable: true, dataTransfer }));
        },
        path.replace(/^.*\//, ''),
        text,
      );
    },
  };
}

/** The same where the browser runs no script: the file is chosen. */
export function mouseWithoutScript(page: Page): Hand {
  return {
    ...pointing(page),
    giveFile: async (path) => {
      const control = (await page.waitForSelector('#files')) as ElementHandle<HTMLInputElement> | null;
      if (control === null) throw new Error('The desk takes no files.');
      await control.uploadFile(path);
    },
  };
}

function pointing(page: Page): Omit<Hand, 'giveFile'> {
  const click = async (selector: string): Promise<void> => {
    const [element] = await seen(page, selector);
    if (element === undefined) throw new Error(`Nothing to point at: ${selector} on ${page.url()}`);
    await element.click();
  };
  return {
    press: async (selector, timeout = patience) => {
      await Promise.all([page.waitForNavigation({ waitUntil: 'load', timeout }), click(selector)]);
    },
    open: click,
    type: async (selector, text) => {
      await click(selector);
      await page.keyboard.press('End');
      await page.keyboard.type(text);
    },
    choose: click,
  };
}

/** What a person sees of what a selector means; what is folded away cannot be pointed at. */
async function seen(page: Page, selector: string): Promise<readonly ElementHandle[]> {
  const elements = await page.$$(selector);
  const boxes = await Promise.all(elements.map((element) => element.boundingBox()));
  return elements.filter((_, index) => (boxes[index]?.width ?? 0) > 0);
}
