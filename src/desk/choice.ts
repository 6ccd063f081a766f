import { html, type Markup } from './markup.ts';

interface Choice {
  readonly type: 'radio' | 'checkbox';
  readonly id: string;
  readonly name: string;
  readonly value: string;
  readonly checked: boolean;
  readonly words: Markup | string;
}

/** One thing to tick, or one of several to choose. */
export function choice({ type, id, name, value, checked, words }: Choice): Markup {
  return html`<label class="choice" for="${id}"
    ><input
      type="${type}"
      id="${id}"
      name="${name}"
      value="${value}"
      ${checked ? 'checked' : ''}
    />${words}</label
  >`;
}
