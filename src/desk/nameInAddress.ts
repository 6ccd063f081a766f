/** The name of a report in an address that was typed or pasted; a name alone is one. */
export function nameInAddress(typed: string): string {
  const text = typed.trim();
  const inAddress = /(?:^|\/)reports\/([^/?#]+)/.exec(text)?.[1];
  if (inAddress === undefined) return text.replace(/^\/+|\/+$/g, '');
  try {
    return decodeURIComponent(inAddress);
  } catch {
    // A stray % is part of a name, which is then refused.
    return inAddress;
  }
}
