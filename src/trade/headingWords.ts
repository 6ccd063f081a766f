/** Words of headings as the trade cuts them short. Common practice, no source. */
const abbreviations: Readonly<Record<string, string>> = {
  ang: 'angle',
  angl: 'angle',
  att: 'attack',
  atk: 'attack',
  ax: 'axis',
  desc: 'descent',
  dev: 'deviation',
  dir: 'direction',
  dirn: 'direction',
  dist: 'distance',
  dyn: 'dynamic',
  fac: 'factor',
  fact: 'factor',
  hgt: 'height',
  hor: 'horizontal',
  horiz: 'horizontal',
  horz: 'horizontal',
  ht: 'height',
  lat: 'lateral',
  lch: 'launch',
  lnch: 'launch',
  offl: 'offline',
  rt: 'rate',
  spd: 'speed',
  tot: 'total',
  vel: 'velocity',
  ver: 'vertical',
  vert: 'vertical',
};

/**
 * A heading with its short words written out, "Launch Ang." as "Launch angle"; null where none is short. One word
 * alone is left as it is: "Ht" may be anybody's.
 */
export function writtenOut(phrase: string): string | null {
  const words = phrase.split(/[\s_./-]+/).filter((word) => word !== '');
  if (words.length < 2) return null;
  const whole = words.map((word) => abbreviations[word.toLowerCase()] ?? word).join(' ');
  return whole === words.join(' ') ? null : whole;
}
