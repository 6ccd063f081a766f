import { encode } from 'uqr';
import { escapeXml } from '../prose/escapeXml.ts';

/** Modules of white that scanners need on every side (ISO/IEC 18004). */
const quiet = 4;

/** QR code of an address as an SVG, black on white whatever the theme; `name` is what it is called. */
export function qrCode(address: string, name: string): string {
  const { data, size } = encode(address, { ecc: 'M', border: 0 });
  const whole = size + 2 * quiet;
  const runs = data.flatMap((row, y) =>
    darkRuns(row).map(([x, length]) => `M${x + quiet},${y + quiet}h${length}v1h-${length}z`),
  );
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" class="qr" viewBox="0 0 ${whole} ${whole}" width="132" height="132" role="img" aria-labelledby="qr-name" shape-rendering="crispEdges">` +
    `<title id="qr-name">${escapeXml(name)}</title><rect width="${whole}" height="${whole}" fill="#ffffff"/>` +
    `<path d="${runs.join('')}" fill="#000000"/></svg>`
  );
}

/** Where dark modules begin in a row, and how many follow one another. */
function darkRuns(row: readonly boolean[]): readonly (readonly [start: number, length: number])[] {
  const runs: [number, number][] = [];
  row.forEach((dark, x) => {
    const last = runs.at(-1);
    if (!dark) return;
    if (last !== undefined && last[0] + last[1] === x) last[1] += 1;
    else runs.push([x, 1]);
  });
  return runs;
}
