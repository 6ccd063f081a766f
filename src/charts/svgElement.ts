/** Something that no mark of Plot draws, for a mark of our own. */
export const svgElement = (
  document: Document,
  name: string,
  attributes: Readonly<Record<string, string | number>>,
  inside: readonly SVGElement[] = [],
): SVGElement => {
  const element = document.createElementNS('http://www.w3.org/2000/svg', name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  for (const child of inside) element.appendChild(child);
  return element;
};
