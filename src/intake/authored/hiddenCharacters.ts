/**
 * Characters that take no ink: of zero width, blank-looking, or marks that only steer what stands beside them. U+FFFD
 * is what is left of a letter that was lost.
 */
const hidden =
  /[\u00AD\u034F\u061C\u115F\u1160\u17B4\u17B5\u180B-\u180F\u200B-\u200F\u202A-\u202E\u2060-\u206F\u2800\u3164\uFE00-\uFE0F\uFEFF\uFFA0\uFFF9-\uFFFD\u{E0000}-\u{E0FFF}]/gu;

/** Letters of scripts that join by U+200C and U+200D, or are written from right to left. */
const joining =
  /[\p{Script=Arabic}\p{Script=Syriac}\p{Script=Mongolian}\p{Script=Devanagari}\p{Script=Bengali}\p{Script=Gurmukhi}\p{Script=Gujarati}\p{Script=Oriya}\p{Script=Tamil}\p{Script=Telugu}\p{Script=Kannada}\p{Script=Malayalam}\p{Script=Sinhala}\p{Script=Khmer}\p{Script=Myanmar}]/u;
const fromTheRight = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}]/u;
/** What a variation selector may follow: a picture, a digit of a keycap, a Chinese or Mongolian letter. */
const varied = /[\p{Extended_Pictographic}\d#*\p{Script=Han}\p{Script=Mongolian}]$/u;
const picture = /\p{Extended_Pictographic}[\uFE0F\p{Emoji_Modifier}]*$/u;

/** Whether such a character does what it is for where it stands: joins letters or pictures, or turns a direction. */
function hasUse(character: string, before: string, behind: string, whole: string): boolean {
  if (/[\u200C\u200D]/.test(character) && joining.test(before.slice(-2)) && joining.test(behind.slice(0, 2)))
    return true;
  if (character === '\u200D') return picture.test(before) && /^\p{Extended_Pictographic}/u.test(behind);
  if (/[\u200E\u200F\u061C]/.test(character)) return fromTheRight.test(whole);
  if (/[\u180B-\u180D\u180F\uFE00-\uFE0F\u{E0100}-\u{E01EF}]/u.test(character)) return varied.test(before);
  return false;
}

/** The first character of a name that nobody can see, such as U+200B; null where all can be seen. */
export function hiddenIn(name: string): string | null {
  for (const found of name.matchAll(hidden)) {
    const [character] = found;
    const behind = name.slice(found.index + character.length);
    if (hasUse(character, name.slice(0, found.index), behind, name)) continue;
    return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
  }
  return null;
}

/** A name without such characters, useful or not: two names that differ in them alone look the same. */
export const withoutHidden = (name: string): string => name.replace(hidden, '');

/** Whether nothing of a name can be seen: blanks, hidden characters and accents without a letter. */
export const isEmptyToTheEye = (name: string): boolean =>
  !/[\p{L}\p{N}\p{P}\p{S}]/u.test(withoutHidden(name));
