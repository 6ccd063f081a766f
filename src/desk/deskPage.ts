import { html, type Markup } from './markup.ts';
import type { DeskPlaces } from './deskPlaces.ts';

interface DeskPage {
  readonly title: string;
  /** Who publishes; null while nobody has said. */
  readonly shop: string | null;
  readonly places: DeskPlaces;
  readonly main: Markup;
  /** Whether something stands beside it where there is room. */
  readonly wide?: boolean;
}

/** A page of the desk, in the look of the site. */
export function deskPage({ title, shop, places, main, wide = false }: DeskPage): Markup {
  return html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <meta name="robots" content="noindex" />
        <title>${title} | Desk</title>
        <link rel="stylesheet" href="${places.styles}" />
        <script type="module" src="${places.script}"></script>
      </head>
      <body class="desk${wide ? ' desk-wide' : ''}">
        <a class="skip" href="#main">Skip to the content</a>
        <header class="masthead">
          <a class="brand" href="${places.front}">${shop === null ? 'Desk' : `${shop}: desk`}</a>
          <nav class="places" aria-label="Desk">
            <a href="${places.front}">Reports</a>
            <a href="${places.plan}">Plan a test</a>
            <a href="${places.shop}">Your shop</a>
            <a href="${places.site}">The site</a>
          </nav>
        </header>
        <main id="main" tabindex="-1">${main}</main>
      </body>
    </html>`;
}
