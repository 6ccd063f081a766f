const pairs = (letters: string, latin: string): readonly (readonly [string, string])[] =>
  [...letters].map((letter, index) => [letter, latin.charAt(index)]);

/**
 * Letters of Cyrillic and Greek with the Latin letter that they are drawn as. A part of the confusables of Unicode
 * Technical Standard 39: those that no reader tells apart.
 */
const drawnAs: ReadonlyMap<string, string> = new Map([
  ...pairs('АВЕЅІЈКМНОРСТУХԌԚԜӀ', 'ABESIJKMHOPCTYXGQWI'),
  ...pairs('аеѕіјорсухһԁԛԝӏ', 'aesijopcyxhdqwl'),
  ...pairs('ΑΒΕΖΗΙΚΜΝΟΡΤΥΧϹͿ', 'ABEZHIKMNOPTYXCJ'),
  ...pairs('ινορϲϳ', 'ivopcj'),
]);

/** Letters in other widths and weights, and two letters in one. */
const otherForms = /[\uFB00-\uFB06\uFF01-\uFFDC\u{1D400}-\u{1D7FF}]/gu;

/** A letter of another script inside a Latin word, drawn as a Latin one. */
interface ForeignLetter {
  readonly letter: string;
  /** Such as U+0410. */
  readonly code: string;
  readonly script: 'Cyrillic' | 'Greek';
  readonly latin: string;
  readonly word: string;
}

/** The first of them in a name; words of one script alone are fine, whichever it is. */
export function foreignLetterIn(name: string): ForeignLetter | null {
  for (const [word] of name.matchAll(/[\p{L}\p{M}]+/gu)) {
    if (!/\p{Script=Latin}/u.test(word)) continue;
    for (const letter of word) {
      const latin = drawnAs.get(letter);
      if (latin === undefined) continue;
      const code = `U+${(letter.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
      const script = /\p{Script=Greek}/u.test(letter) ? 'Greek' : 'Cyrillic';
      return { letter, code, script, latin, word };
    }
  }
  return null;
}

/** A name as it looks: names that are drawn alike come out the same. Casing and spaces are the caller's. */
export function asDrawn(name: string): string {
  const plain = name.normalize('NFC').replace(otherForms, (letter) => letter.normalize('NFKC'));
  return [...plain].map((letter) => drawnAs.get(letter) ?? letter).join('');
}
