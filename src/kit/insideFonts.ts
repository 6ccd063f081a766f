/** Each font face with its woff2 inside; other formats are for browsers that no longer are. */
export function withFonts(css: string, bytes: (address: string) => Uint8Array | null): string {
  return css.replaceAll(/@font-face\s*\{[^}]*\}/g, (face) => {
    const address = /url\(["']?([^"')]+\.woff2)["']?\)/.exec(face)?.[1];
    const font = address === undefined ? null : bytes(address);
    if (font === null) return '';
    const data = `url(data:font/woff2;base64,${Buffer.from(font).toString('base64')}) format("woff2")`;
    return face.replace(/src:[^;}]*/, () => `src:${data}`);
  });
}

export function withoutFonts(css: string): string {
  return css.replaceAll(/@font-face\s*\{[^}]*\}/g, '');
}
