import type { DrawnFigure } from '../../../src/charts/figure.ts';
import { toldTwice } from '../../../src/site/toldTwice.ts';
import type { Report } from '../../../src/kit/report.ts';
import type { ComponentExamples } from '../example.ts';

const withTold = (report: Report): Record<string, unknown> => ({ report, told: toldTwice(report) });

function drawn({ figures }: Report, id: string): DrawnFigure {
  const figure = figures.find((one) => one.id === id);
  if (figure?.kind !== 'drawn') throw new Error(`There is no chart ${id} to show.`);
  return figure;
}

export const answer: ComponentExamples = {
  component: 'Answer',
  examples: (report) => [
    {
      name: 'two heads in metres and yards',
      props: withTold(report('two-heads')),
      shows: [
        'The answer: </span>',
        'Cannot tell',
        'Our interest.',
        'data-units="metres"',
        'data-units="yards" hidden',
      ],
      hides: ['undefined'],
    },
    {
      name: 'six heads of long names: leaders in one breath, where each came from',
      props: withTold(report('six-shafts')),
      shows: ['carried farthest; we cannot tell them apart.', 'We took the others from stock.'],
    },
  ],
};

export const facts: ComponentExamples = {
  component: 'Facts',
  examples: (report) => [
    {
      name: 'how sure, who hit, prices and a caution, each under its label',
      props: withTold(report('six-shafts')),
      shows: ['<dt>How sure</dt>', '/glossary/#likely', '<dt>Who hit</dt>', '<dt>Price</dt>'],
      hides: ['undefined'],
    },
    {
      name: 'without prices',
      props: withTold(report('two-heads')),
      shows: ['<dt>Who hit</dt>', 'Closest to you if you swing about'],
      hides: ['<dt>Price</dt>'],
    },
  ],
};

export const furtherAnswer: ComponentExamples = {
  component: 'FurtherAnswer',
  examples: (report) => {
    const two = report('two-measures');
    return [
      {
        name: 'a second measure with its own title and chart',
        props: { told: toldTwice(two), place: 1, figure: null },
        shows: ['id="answer-2"', 'answer-text'],
      },
      {
        name: 'no such measure',
        props: { told: toldTwice(report('two-heads')), place: 1, figure: null },
        shows: [],
        hides: ['<section', '<h2'],
      },
    ];
  },
};

export const figure: ComponentExamples = {
  component: 'Figure',
  examples: (report) => {
    const one = report('two-heads');
    return [2, 3].map((level) => ({
      name: `under a heading of level ${level}`,
      props: { figure: drawn(one, 'shots'), told: toldTwice(one), level },
      shows: [`<h${level} id="shots-heading"`, 'class="question"', 'role="img"', '<figcaption>'],
    }));
  },
};

export const notices: ComponentExamples = {
  component: 'Notices',
  examples: (report) => [
    {
      name: 'a correction and a reply, each leading to its words',
      props: { report: report('two-heads'), newer: null },
      shows: ['class="notice"', 'href="#corrections"', 'Corrected ', 'Reply from '],
    },
    {
      name: 'what took its place',
      props: { report: report('two-heads-before'), newer: 'Two driver heads, one shaft' },
      shows: ['Replaced by a newer report:', '/reports/two-heads/', 'Two driver heads, one shaft'],
    },
    {
      name: 'nothing to say',
      props: { report: report('six-shafts'), newer: null },
      shows: [],
      hides: ['class="notice"'],
    },
  ],
};

export const inThisReport: ComponentExamples = {
  component: 'InThisReport',
  examples: () => [
    {
      name: 'two sections',
      props: {
        label: 'In this report',
        sections: [
          { address: '#main', title: 'The top' },
          { address: '#main', title: 'The top again' },
        ],
      },
      shows: ['aria-labelledby="contents-label"', 'href="#main"', 'The top again'],
    },
  ],
};
