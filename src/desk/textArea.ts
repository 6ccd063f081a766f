import { html, type Markup } from './markup.ts';

interface TextArea {
  readonly id: string;
  readonly name: string;
  readonly rows: number;
  readonly text: string;
  /** Further attributes. */
  readonly attributes: Markup | '';
}

/** A text of many lines. The line break at its beginning is dropped by every browser; without it the first of the text would be. */
export function textArea({ id, name, rows, text, attributes }: TextArea): Markup {
  // prettier-ignore
  return html`<textarea id="${id}" name="${name}" rows="${rows}" ${attributes}>
${text}</textarea>`;
}
