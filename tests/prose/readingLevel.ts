import { syllable } from 'syllable';

const words = (text: string): readonly string[] => text.match(/[\p{L}\d][\p{L}\d.,'’°/-]*/gu) ?? [];

/** A number is read digit group by digit group; one syllable a digit is near enough, and no easier than the truth. */
const syllables = (word: string): number =>
  /\d/.test(word) ? (word.match(/\d/g) ?? []).length : Math.max(1, syllable(word));

/**
 * Flesch-Kincaid grade level: 0.39 words a sentence + 11.8 syllables a word - 15.59 (Kincaid, Fishburne, Rogers and
 * Chissom 1975, "Derivation of new readability formulas for Navy enlisted personnel", Research Branch Report 8-75).
 * What a colon parts is read as two sentences, as GNU `style` counts them (its manual: a sentence ends with a full stop,
 * colon, question mark or exclamation mark).
 */
export function gradeLevel(told: readonly string[]): number {
  const sentences = told.flatMap((one) => one.split(/:\s/)).filter((one) => words(one).length > 0);
  const all = sentences.flatMap(words);
  const spoken = all.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * (all.length / sentences.length) + 11.8 * (spoken / all.length) - 15.59;
}
