import { expect, test } from 'vitest';
import { contactLink } from '../../src/prose/contactLink.ts';

test.each([
  ['hello@workshop.example', 'hello@workshop.example', 'mailto:hello@workshop.example'],
  ['+44 (0)20 7946-0123', '+44\u00a0(0)20\u00a07946\u00a00123', 'tel:+442079460123'],
  ['020 7946 0123', '020\u00a07946\u00a00123', 'tel:02079460123'],
  [
    'https://www.workshop.example/contact/',
    'workshop.example/contact',
    'https://www.workshop.example/contact/',
  ],
  ['ask at the counter', 'ask at the counter', null],
  ['javascript:alert(1)', 'javascript:alert(1)', null],
  ['2026', '2026', null],
])('%s', (written, words, href) => {
  expect(contactLink(written)).toEqual({ words, href });
});
