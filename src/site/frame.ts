/**
 * What a frame tells the page around it: how high it is, px. `name` is ours, so that a page that hears several can tell
 * them apart.
 */
interface FrameHeight {
  readonly name: 'straightface:height';
  readonly px: number;
}

/** For a browser: the theme that the frame's address asks for, as "?theme=dark"; "auto" leaves it to the reader's device. */
export function setFrameTheme(page: Document): void {
  const theme = new URLSearchParams(page.location.search).get('theme');
  if (theme === 'auto') page.documentElement.removeAttribute('data-theme');
  else if (theme === 'dark') page.documentElement.dataset['theme'] = 'dark';
}

/** For a browser: tells the page around a frame how high the frame is, at once and whenever that changes. */
export function tellFrameHeight(page: Document): void {
  const { body, defaultView } = page;
  if (defaultView === null || defaultView.parent === defaultView) return;
  const tell = (): void => {
    const message: FrameHeight = {
      name: 'straightface:height',
      px: Math.ceil(body.getBoundingClientRect().height),
    };
    // Anybody may know how high a chart is that anybody may frame.
    defaultView.parent.postMessage(message, '*');
  };
  new ResizeObserver(tell).observe(body);
  defaultView.addEventListener('load', tell);
}
