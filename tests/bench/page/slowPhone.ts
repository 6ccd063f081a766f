import type { Browser, CDPSession, Page } from 'puppeteer-core';

/** A page to be measured, and where on it is what a reader came for. */
export interface Watched {
  readonly address: string;
  /** CSS selector of the answer; null where a page has none. */
  readonly answer: string | null;
  /** CSS selector of the lead chart, an inline SVG or a picture. */
  readonly chart: string | null;
}

/** One visit with nothing cached. Times in ms from the start of the navigation; null for what never came. */
export interface Visit {
  readonly firstPaint: number | null;
  readonly answer: number | null;
  readonly chart: number | null;
  /** Everything there that the page asks for by itself. */
  readonly loaded: number;
  /** Over the wire, headers included. */
  readonly bytes: number;
  /** Those of web fonts among them. */
  readonly fontBytes: number;
  readonly requests: number;
  /** Cumulative layout shift, as the browser counts it. */
  readonly shift: number;
}

const screen = { width: 390, height: 844, isMobile: true, hasTouch: true, deviceScaleFactor: 3 } as const;

/** 1.6 Mbit/s down and 0.75 up, 150 ms to each answer. */
const line = {
  offline: false,
  latency: 150,
  downloadThroughput: 1.6e6 / 8,
  uploadThroughput: 0.75e6 / 8,
} as const;

const timesSlower = 4;

interface Seen {
  readonly painted: Record<string, number>;
  shift: number;
}

/**
 * Watches in the page itself, from before its first byte. Something is painted at the beginning of the frame after the one
 * in which it was whole, had a size and was let be drawn: that is up to a frame late, never early. Frames are not run
 * while a page may not be painted, so style sheets that hold it up count.
 */
function watch(wanted: Readonly<Record<string, string>>): void {
  const seen: Seen = { painted: {}, shift: 0 };
  Object.assign(globalThis, { seen });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries())
      seen.shift += (entry as PerformanceEntry & { value: number }).value;
  }).observe({ type: 'layout-shift', buffered: true });

  /** Its end has been read: something stands after it, or nothing more comes. */
  const isWhole = (element: Element): boolean => {
    if (element instanceof HTMLImageElement && !(element.complete && element.naturalWidth > 0)) return false;
    if (document.readyState !== 'loading') return true;
    for (let node: Node | null = element; node !== null; node = node.parentNode)
      if (node.nextSibling !== null) return true;
    return false;
  };
  const isSeen = (element: Element): boolean =>
    element.getBoundingClientRect().width > 0 && element.checkVisibility({ visibilityProperty: true });
  const open = new Map(Object.entries(wanted));
  const look = (): void => {
    for (const [name, selector] of open) {
      const there = [...document.querySelectorAll(selector)].some((one) => isWhole(one) && isSeen(one));
      if (!there) continue;
      open.delete(name);
      requestAnimationFrame(() => (seen.painted[name] = performance.now()));
    }
    if (open.size > 0) requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}

/** Visits a page as a phone on a poor line does: a quarter of this machine's speed, nothing cached. */
export async function visit(browser: Browser, { address, answer, chart }: Watched): Promise<Visit> {
  const context = await browser.createBrowserContext();
  try {
    const page = await context.newPage();
    await page.setViewport(screen);
    const session = await page.createCDPSession();
    const wire = await slowLine(session);
    await session.send('Emulation.setCPUThrottlingRate', { rate: timesSlower });
    const wanted = { ...(answer === null ? {} : { answer }), ...(chart === null ? {} : { chart }) };
    await page.evaluateOnNewDocument(watch, wanted);
    await page.goto(address, { waitUntil: 'networkidle0', timeout: 120_000 });
    await allPainted(page, Object.keys(wanted));
    const { painted, shift, loaded, firstPaint } = await told(page);
    return {
      firstPaint,
      answer: painted['answer'] ?? null,
      chart: painted['chart'] ?? null,
      loaded,
      shift,
      ...wire,
    };
  } finally {
    await context.close();
  }
}

/** Slows the line, and counts what comes over it from then on. */
async function slowLine(
  session: CDPSession,
): Promise<Readonly<Pick<Visit, 'bytes' | 'fontBytes' | 'requests'>>> {
  const wire = { bytes: 0, fontBytes: 0, requests: 0 };
  const fonts = new Set<string>();
  await session.send('Network.enable');
  await session.send('Network.setCacheDisabled', { cacheDisabled: true });
  await session.send('Network.emulateNetworkConditions', line);
  session.on('Network.responseReceived', ({ requestId, type, response }) => {
    if (response.url.startsWith('http')) wire.requests += 1;
    if (type === 'Font') fonts.add(requestId);
  });
  session.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
    wire.bytes += encodedDataLength;
    if (fonts.has(requestId)) wire.fontBytes += encodedDataLength;
  });
  return wire;
}

/** All that is watched for is painted, or five seconds are over, and a moment more for what moves late. */
async function allPainted(page: Page, names: readonly string[]): Promise<void> {
  await page
    .waitForFunction(
      (wanted: readonly string[]) =>
        wanted.every((name) => name in (globalThis as unknown as { seen: Seen }).seen.painted),
      { timeout: 5000 },
      names,
    )
    .catch(() => undefined);
  await new Promise((later) => setTimeout(later, 500));
}

const told = (page: Page): Promise<Seen & { readonly loaded: number; readonly firstPaint: number | null }> =>
  page.evaluate(() => {
    const { seen } = globalThis as unknown as { seen: Seen };
    const [navigation] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
    const [first] = performance.getEntriesByName('first-contentful-paint');
    return { ...seen, loaded: navigation?.loadEventStart ?? 0, firstPaint: first?.startTime ?? null };
  });
