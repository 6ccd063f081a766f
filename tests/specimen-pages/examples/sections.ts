import type { Report } from '../../../src/kit/report.ts';
import { toldTwice } from '../../../src/site/toldTwice.ts';
import type { ComponentExamples } from '../example.ts';

const withTold = (report: Report): Record<string, unknown> => ({ report, told: toldTwice(report) });

export const sideBySide: ComponentExamples = {
  component: 'SideBySide',
  examples: (report) => [
    {
      name: 'two heads of one golfer, in metres and yards',
      props: withTold(report('two-heads')),
      shows: [
        'class="of-2"',
        '<th scope="col">Hawthorn Long 90</th>',
        'scope="row"',
        'sd is the standard deviation of single shots',
        'Within 14 metres',
        'Within 15 yards',
        'Calculated, not measured: ',
        'data-units="yards" hidden',
        '/reports/two-heads/details/#all-numbers',
      ],
      hides: ['undefined', 'NaN'],
    },
    {
      name: 'six shafts of long names, with prices',
      props: withTold(report('six-shafts')),
      shows: [
        'class="of-6"',
        'Price',
        '€149',
        'Supplied by',
        'lent by its distributor',
        'Seen, not tested for: ',
      ],
      hides: ['undefined', 'NaN'],
    },
    {
      name: 'eight golfers, whose averages have no range',
      props: withTold(report('eight-golfers')),
      shows: ['Averages of all shots of eight golfers', 'compared golfer by golfer'],
      hides: ['>sd ', 'undefined'],
    },
  ],
};

export const otherReasons: ComponentExamples = {
  component: 'OtherReasons',
  examples: (report) => [
    {
      name: 'two heads, every check a line with more on the page of details',
      props: withTold(report('two-heads')),
      shows: [
        'Could it be something else?',
        'As printed',
        'Does the answer hold?',
        '/reports/two-heads/details/#order',
      ],
      hides: ['undefined', '<details class="numbers"'],
    },
    {
      name: 'six shafts, what holds of every pair',
      props: withTold(report('six-shafts')),
      shows: ['what holds of every pair', '/reports/six-shafts/details/#checks'],
      hides: ['undefined', '<details class="numbers"'],
    },
  ],
};

export const allChecks: ComponentExamples = {
  component: 'AllChecks',
  examples: (report) => [
    {
      name: 'a table of other ways, the rest in sentences',
      props: { told: toldTwice(report('two-heads')) },
      shows: ['id="checks"', 'Whichever single shot is left out'],
      hides: ['<details'],
    },
  ],
};

export const howTested: ComponentExamples = {
  component: 'HowTested',
  examples: (report) => [
    {
      name: 'conditions in brief, checks that are not yes, what is not recorded',
      props: withTold(report('two-heads')),
      shows: [
        'Who hit',
        'Where',
        'Fair-test checks: ',
        'test details',
        '<strong>Not recorded.</strong>',
        '/reports/two-heads/details/#conditions',
      ],
      hides: ['undefined'],
    },
  ],
};

export const howTestedWhole: ComponentExamples = {
  component: 'HowTestedWhole',
  examples: (report) => [
    {
      name: 'every check and every condition, and the register',
      props: withTold(report('two-heads')),
      shows: ['id="conditions"', 'id="all-fairness"', 'Money', 'We keep no register of planned tests'],
      hides: ['<details'],
    },
  ],
};

export const numbersAndData: ComponentExamples = {
  component: 'NumbersAndData',
  examples: (report) => [
    {
      name: 'files, the kit and the sheet',
      props: { report: report('two-heads') },
      shows: ['shots.csv', 'findings.json', 'reproduce.R', '/kit/', '/sheet/', '/details/#all-numbers'],
      hides: ['<details', 'undefined'],
    },
  ],
};

export const allNumbers: ComponentExamples = {
  component: 'AllNumbers',
  examples: (report) => [
    {
      name: 'averages, differences with p, every shot, charts that are not drawn',
      props: withTold(report('two-heads')),
      shows: [
        'id="all-numbers"',
        'Carry, a main measure',
        'p is held against 0.05.',
        'Every shot in the order it was hit',
        'Charts not drawn, and why',
        'All but the main measures: Seen, but not what this test set out to check',
      ],
      hides: ['<details', 'undefined', 'NaN'],
    },
    {
      name: 'eight golfers, each shot with who hit it',
      props: withTold(report('eight-golfers')),
      shows: ['<td>89 mph</td>', '<td>Hawthorn Long 90</td>'],
      hides: ['undefined'],
    },
  ],
};
