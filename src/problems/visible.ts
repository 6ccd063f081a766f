// Control characters move the cursor or colour a terminal; marks of direction and of no width make text read as what it is not.
const unseen =
  /[\u0000-\u001f\u007f-\u009f\u00ad\u061c\u180e\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff\ufff9-\ufffb\u{e0000}-\u{e007f}]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/gu;

const codePoint = (character: string): string =>
  (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');

/** Text as it can be shown anywhere: what cannot be seen, or acts on a terminal, is written as `<U+202E>`. */
export function visible(text: string): string {
  return text.replace(unseen, (character) => `<U+${codePoint(character)}>`);
}

/** JSON text in which nothing unseen is left raw; it still means the same. */
export function visibleJson(json: string): string {
  return json.replace(unseen, (character) =>
    character === '\n'
      ? character
      : [...Array(character.length).keys()]
          .map((index) => `\\u${character.charCodeAt(index).toString(16).padStart(4, '0')}`)
          .join(''),
  );
}
