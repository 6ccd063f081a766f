import type { Said } from './said.ts';

/** One of the ways to say something; 0 is how it is said with the least room, the others are tried by weight. */
export interface Form {
  readonly weight: number;
  readonly said: readonly Said[];
}

/** Something that may be said in several forms, from the least to the best; without one of weight 0 it may be left out. */
export type Part = readonly Form[];

/**
 * The sentences of the parts, in the order of the parts, each in the best form for which there is room: those of low
 * weight are let in first, and a form is in whole or not at all.
 */
export function fitParts(parts: readonly Part[], fits: (said: readonly Said[]) => boolean): readonly Said[] {
  const chosen = parts.map((part) => part.find(({ weight }) => weight === 0)?.said ?? []);
  const steps = parts
    .flatMap((part, at) => part.filter(({ weight }) => weight > 0).map((form) => ({ at, ...form })))
    .toSorted((x, y) => x.weight - y.weight);
  for (const { at, said } of steps) {
    const before = chosen[at] ?? [];
    chosen[at] = said;
    if (!fits(onceEach(chosen.flat()))) chosen[at] = before;
  }
  return onceEach(chosen.flat());
}

/** None twice: an answer may be said by its chart too. */
function onceEach(sentences: readonly Said[]): readonly Said[] {
  return sentences.filter(({ text }, at) => sentences.findIndex((other) => other.text === text) === at);
}

/** A part that is always said, as it is. */
export function always(said: readonly Said[]): Part {
  return [{ weight: 0, said }];
}

/** A part that is said if there is room for it. */
export function withRoom(weight: number, said: readonly Said[]): Part {
  return said.length === 0 ? [] : [{ weight, said }];
}

/** Whether sentences fit so many characters. */
export function within(limit: number): (said: readonly Said[]) => boolean {
  return (said) => said.reduce((length, { text }) => length + text.length + 1, -1) <= limit;
}
