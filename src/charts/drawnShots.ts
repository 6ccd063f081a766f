import type { Session } from '../intake/session.ts';
import { evenlyDrawn } from '../prose/english/charts/shots.ts';
import { evenlySpread } from '../stats/evenlySpread.ts';
import { onceEach } from '../stats/onceEach.ts';

/** More marks than this are one grey area, and a page of them is too heavy for a phone. */
export const mostDrawn = 2000;

/** The shots that charts draw and tables list one by one: all up to 2,000, of more 2,000 that are spread evenly over the session. */
export const drawnShots = onceEach(({ shots }: Session) => evenlySpread(shots, mostDrawn));

/** What a caption says of shots that are not drawn; nothing where all are. */
export const drawnWords = ({ shots }: Session): readonly string[] =>
  shots.length <= mostDrawn ? [] : [evenlyDrawn(shots.length, mostDrawn)];
