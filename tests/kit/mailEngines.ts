/** What is read of a mail's HTML: its text, without what only word-processor engines are given. */
export function wordsOf(html: string): string {
  return html
    .replaceAll(/<!--\[if (?:gte )?mso[^\]]*\]>[\s\S]*?<!\[endif\]-->/g, '')
    .replaceAll(/<style>[\s\S]*?<\/style>|<title>[\s\S]*?<\/title>/g, '')
    .replaceAll(/<!--[\s\S]*?-->/g, '')
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll(/&#(?:39|x27);|&apos;/g, "'")
    .replaceAll('&nbsp;', ' ')
    .replaceAll('&amp;', '&')
    .replaceAll(/\s+/g, ' ');
}

/** The same HTML as an engine takes it that knows `mso` conditions: what they hold is markup, what excludes it is none. */
export function asWordProcessor(html: string): string {
  return html
    .replaceAll(/<!--\[if !mso\]><!-->[\s\S]*?<!--<!\[endif\]-->/g, '')
    .replaceAll(/<!--\[if (?:gte )?mso[^\]]*\]>([\s\S]*?)<!\[endif\]-->/g, '$1');
}

/** As a program takes it that drops the style elements. */
export function withoutStyleElements(html: string): string {
  return html.replaceAll(/<style>[\s\S]*?<\/style>/g, '');
}

/** As such an engine lays it out, which knows no greatest width either. */
export function laidOutByWordProcessor(html: string): string {
  return withoutStyleElements(asWordProcessor(html)).replaceAll(/max-width:[^;]*;/g, '');
}

/** As a webmail shows it that recolours, and marks that it did. */
export function recoloured(html: string): string {
  return html.replace('<html ', '<html data-ogsc="" data-ogsb="" ');
}
