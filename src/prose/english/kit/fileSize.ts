/** "1200 × 1094 px, 43 kB"; of what is no picture "1.2 MB". */
export function sayFileSize(
  bytes: number,
  pixels: { readonly width: number; readonly height: number } | null,
): string {
  const weight =
    bytes < 1e6 ? `${Math.max(1, Math.round(bytes / 1000))} kB` : `${(bytes / 1e6).toFixed(1)} MB`;
  return pixels === null ? weight : `${pixels.width} × ${pixels.height} px, ${weight}`;
}
