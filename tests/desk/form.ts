import { parseHTML } from 'linkedom';
import { parseFragment } from 'parse5';

/** The controls of a page by name: what a browser would send if nobody touched them. */
export function sentBy(page: string): Record<string, string[]> {
  const { document } = parseHTML(page);
  const sent: Record<string, string[]> = {};
  const form = document.querySelector('form.answers');
  for (const control of form?.querySelectorAll('input, textarea') ?? []) {
    const name = control.getAttribute('name');
    const type = control.getAttribute('type');
    if (name === null) continue;
    if ((type === 'radio' || type === 'checkbox') && !control.hasAttribute('checked')) continue;
    const value =
      control.tagName === 'TEXTAREA'
        ? // A browser drops the first line break, and sends each as two characters.
          decoded(control.textContent ?? '')
            .replace(/^\n/, '')
            .replaceAll('\n', '\r\n')
        : (control.getAttribute('value') ?? '');
    sent[name] = [...(sent[name] ?? []), value];
  }
  return sent;
}

/** The text that escaped text stands for; the reader above leaves that of a textarea as it is written. */
function decoded(escaped: string): string {
  const [text] = parseFragment(escaped).childNodes;
  return text !== undefined && 'value' in text ? text.value : '';
}
