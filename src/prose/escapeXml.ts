/** Text as it stands inside an element or a quoted attribute of XML or HTML. */
export function escapeXml(text: string): string {
  // Most of a drawing's values hold none of these.
  if (!/[&<>"]/.test(text)) return text;
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
