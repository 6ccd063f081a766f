/** A line of the reference without its marks for code and links. */
export const plainWords = (markdown: string): string =>
  markdown.replace(/\[([^\]]*)\]\([^)]*\)/g, '$1').replaceAll('`', '');
