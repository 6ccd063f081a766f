/** A sign of nobody's: a workbench with a lamp over it. */
export function inventedLogo(colour: string): string {
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 120 48"><style>.b{fill:${colour}}</style>` +
    '<path class="b" d="M4 34h112v6H4zM12 40h6v8h-6zM102 40h6v8h-6zM46 26a14 14 0 0 1 28 0zM58 0h4v13h-4z"/></svg>'
  );
}

/** Its colours on either ground. */
export const inventedColours = { light: '#8a4b08', dark: '#e0a860' } as const;
