const faces = /@font-face\s*\{[^}]*\}/g;

/**
 * Each font face with its woff2 inside; other formats are for browsers that no longer are. It is there at once, so it is
 * not optional as on pages, and the reader's own fonts that stand for it until then go.
 */
export function withFonts(css: string, bytes: (address: string) => Uint8Array | null): string {
  return css.replaceAll(faces, (face) => {
    const address = /url\(["']?([^"')]+\.woff2)["']?\)/.exec(face)?.[1];
    const font = address === undefined ? null : bytes(address);
    if (font === null) return '';
    const data = `url(data:font/woff2;base64,${Buffer.from(font).toString('base64')}) format("woff2")`;
    return face.replace(/font-display:[^;}]*;?/, '').replace(/src:[^;}]*/, () => `src:${data}`);
  });
}

/** Only the faces that are fonts of the reader's own. */
export function withoutFonts(css: string): string {
  return css.replaceAll(faces, (face) => (face.includes('url(') ? '' : face));
}
