/** A line of the reference without its links, and what is typed in quotation marks. */
export const plainWords = (markdown: string): string =>
  markdown.replace(/\[([^\]]*)\]\([^)]*\)/g, '$1').replace(/`([^`]*)`/g, '“$1”');
