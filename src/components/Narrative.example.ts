import { toldTwice } from '../site/toldTwice.ts';
import { chartMark } from '../prose/narrativeParts.ts';
import type { Examples } from './example.ts';

export const examples: Examples = ({ report }) => {
  const one = report('two-heads');
  const narrativeHtml = `<p>Before.</p>${chartMark('shots')}<p>After.</p>`;
  const placed = { ...one, narrativeHtml };
  const [own, other] = toldTwice(one);
  const told = [
    { ...own, narrativeHtml },
    { ...other, narrativeHtml },
  ];
  return [
    {
      name: 'a chart between two paragraphs',
      props: { report: placed, told },
      shows: ['<p>Before.</p>', '<section id="shots"', 'role="img"', '<p>After.</p>'],
      hides: ['<!--chart'],
    },
  ];
};
