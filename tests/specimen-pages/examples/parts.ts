import { figureCopies, reportInOtherUnits, toldTwice } from '../../../src/site/toldTwice.ts';
import { kitOf } from '../../../src/kit/kitOf.ts';
import type { Report } from '../../../src/kit/report.ts';
import type { DrawnFigure } from '../../../src/charts/figure.ts';
import { noBrand, type Logo } from '../../../src/site/brand/brand.ts';
import { cleanLogo } from '../../../src/site/brand/cleanLogo.ts';
import { sha256 } from '../../../src/site/contentFiles.ts';
import { inventedColours, inventedLogo } from '../inventedLogo.ts';
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
        'The answer',
        '<p class="status">Cannot tell</p>',
        'Who hit.',
        'Our interest.',
        'data-units="metres"',
        'data-units="yards" hidden',
      ],
      hides: ['undefined'],
    },
    {
      name: 'six heads of long names: leaders in one breath, prices, where each came from',
      props: withTold(report('six-shafts')),
      shows: [
        'carried farthest; we cannot tell them apart.',
        '<strong>Price.</strong>',
        'We took the others from stock.',
      ],
    },
  ],
};

export const figure: ComponentExamples = {
  component: 'Figure',
  examples: (report) =>
    (['section', 'part', 'folded'] as const).map((as) => {
      const one = report('two-heads');
      return {
        name: `as a ${as}`,
        props: { figure: drawn(one, 'shots'), told: toldTwice(one), as },
        shows: ['All the shots', 'role="img"', 'Numbers: carry of the shots', '<figcaption>'],
      };
    }),
};

export const figureBody: ComponentExamples = {
  component: 'FigureBody',
  examples: (report) => {
    const one = report('two-heads');
    return [
      {
        name: 'in one system of units',
        props: { figure: drawn(one, 'apart') },
        shows: ['chart-wide', 'chart-narrow'],
        hides: ['data-units'],
      },
      {
        name: 'in both, by one drawing',
        props: { figure: drawn(one, 'shots'), copies: figureCopies(toldTwice(one), 'shots') },
        shows: ['<g data-units="yards" display="none">', 'id="shots-wide-name"'],
        hides: ['shots-wide-yards'],
      },
      {
        name: 'in both, by two, since their words take unlike room',
        props: { figure: drawn(one, 'apart'), copies: figureCopies(toldTwice(one), 'apart') },
        shows: ['<span data-units="yards" hidden>', 'id="apart-wide-name"', 'id="apart-wide-yards-name"'],
      },
    ];
  },
};

export const claims: ComponentExamples = {
  component: 'Claims',
  examples: (report) => [
    {
      name: 'said in yards, borne in the units of the page',
      props: { told: toldTwice(report('five-heads')) },
      shows: ['What we said, checked', 'at least 12 yards farther', 'The shots support this', 'metres'],
    },
    { name: 'none', props: { told: toldTwice(report('two-heads')) }, shows: [], hides: ['What we said'] },
  ],
};

export const golferByGolfer: ComponentExamples = {
  component: 'GolferByGolfer',
  examples: () => [
    {
      name: 'one pair, all in the open',
      props: { words: { open: ['Golfer one: cannot tell.', 'This is for these two golfers.'], folded: [] } },
      shows: ['Golfer one: cannot tell.', 'This is for these two golfers.'],
      hides: ['<details'],
    },
    {
      name: 'many pairs, one after another folded away',
      props: {
        words: {
          open: ['This is for these two golfers.'],
          folded: [
            { pair: 'Alder and Birch', sentences: ['Golfer one: cannot tell.', 'Golfer two: cannot tell.'] },
            { pair: 'Alder and Cedar', sentences: ['Golfer one: cannot tell.'] },
          ],
        },
      },
      shows: ['<summary>', 'Pair by pair, golfer by golfer', '<strong>Alder and Birch.</strong> Golfer one:'],
    },
  ],
};

export const fairness: ComponentExamples = {
  component: 'Fairness',
  examples: (report) => [
    {
      name: 'of a report with little recorded',
      props: withTold(report('two-heads')),
      shows: ['Fair-test checks: ', 'no.', 'not recorded.'],
      hides: ['score'],
    },
  ],
};

export const wouldChange: ComponentExamples = {
  component: 'WouldChange',
  examples: (report) => {
    const one = report('two-heads');
    return [
      {
        name: 'checks in words, charts folded',
        props: { told: toldTwice(one), figures: [drawn(one, 'luck')] },
        shows: [
          'Could it be something else?',
          'Whichever single shot is left out',
          '<details class="folded">',
        ],
      },
    ];
  },
};

export const howTested: ComponentExamples = {
  component: 'HowTested',
  examples: (report) => [
    {
      name: 'checks, what is not recorded, and the register',
      props: withTold(report('two-heads')),
      shows: ['Fair-test checks: ', 'test details', 'We keep no register of planned tests'],
    },
  ],
};

export const numbersAndData: ComponentExamples = {
  component: 'NumbersAndData',
  examples: (report) => [
    {
      name: 'tables, downloads, and charts that are not drawn',
      props: withTold(report('two-heads')),
      shows: ['shots.csv', 'findings.json', 'Every other measure', 'Charts not drawn, and why'],
      hides: ['Not drawn: '],
    },
  ],
};

export const reportLine: ComponentExamples = {
  component: 'ReportLine',
  examples: (report) => [
    {
      name: 'published',
      props: { report: report('two-heads'), level: 2, replacedBy: null },
      shows: ['One golfer, 24 shots, 2 March 2026.', 'Invented data.', '<h2'],
      hides: ['Withdrawn', 'Replaced'],
    },
    {
      name: 'replaced',
      props: { report: report('two-heads-before'), level: 2, replacedBy: 'Two driver heads, one shaft' },
      shows: ['Replaced by a newer report, “Two driver heads, one shaft”. It said: '],
    },
    {
      name: 'withdrawn, without its answer',
      props: { report: report('taken-back'), level: 2, replacedBy: null },
      shows: ['Withdrawn 20 February 2026.'],
      hides: ['For this golfer'],
    },
  ],
};

export const corrections: ComponentExamples = {
  component: 'Corrections',
  examples: (report) => [
    {
      name: 'a correction with old and new, a reply whole, an address',
      props: { front: report('two-heads').source.front, contact: 'corrections@example.test', moved: [] },
      shows: ['It said: 9 degrees. It now says: 10.5 degrees.', 'another shaft &amp; say so', 'mailto:'],
    },
    {
      name: 'none so far, nowhere to write to, an answer that moved',
      props: {
        front: report('five-heads').source.front,
        contact: null,
        moved: [{ since: '2026-04-05', then: 'Alder and Birch: no gap that matters.', now: null }],
      },
      shows: ['is not recorded', '5 April 2026', 'we ask this no more.'],
    },
  ],
};

export const kitItem: ComponentExamples = {
  component: 'KitItem',
  examples: (report) => {
    const own = report('six-shafts');
    const other = reportInOtherUnits(own);
    const [item] = kitOf(own).offered;
    const [same] = kitOf(other).offered;
    if (item === undefined || same === undefined) throw new Error('There is no chart to give away.');
    return [
      {
        name: 'in metres, its words in yards as well',
        props: {
          item,
          copies: [
            { system: own.telling.system, of: item },
            { system: other.telling.system, of: same },
          ],
          folder: '/reports/six-shafts',
          height: 400,
        },
        shows: ['PNG, 1200 pixels wide', 'data-copy="alternative text"', 'data-units="yards" hidden'],
        hides: ['undefined'],
      },
    ];
  },
};

export const unitsSwitch: ComponentExamples = {
  component: 'UnitsSwitch',
  examples: () => [
    {
      name: 'as a place for its button',
      props: { system: 'metres' },
      shows: ['id="units"', 'data-own="metres"'],
      hides: ['<button'],
    },
  ],
};

/** A logo that the specimen site has. */
function logoIn(colour: string): Logo {
  const svg = cleanLogo(inventedLogo(colour))?.svg ?? '';
  const name = `${sha256(new TextEncoder().encode(svg)).slice(0, 12)}.svg`;
  return { name, width: 90, height: 36, content: { kind: 'svg', svg } };
}

const logo = logoIn(inventedColours.light);
const logoDark = logoIn(inventedColours.dark);

export const brand: ComponentExamples = {
  component: 'Brand',
  examples: () => [
    {
      name: 'a shop without a logo',
      props: { brand: noBrand, shop: 'Ash & Sons' },
      shows: ['class="brand"', 'Ash &amp; Sons'],
      hides: ['<img', '<picture'],
    },
    {
      name: 'a logo for each ground',
      props: {
        brand: { ...noBrand, logo, logoDark },
        shop: 'Ash & Sons',
      },
      shows: [
        `srcset="/brand/${logoDark.name}"`,
        'media="screen and (prefers-color-scheme: dark)"',
        `src="/brand/${logo.name}" alt="Ash &amp; Sons" width="90" height="36"`,
      ],
    },
  ],
};

export const shopLinks: ComponentExamples = {
  component: 'ShopLinks',
  examples: () => [
    {
      name: 'all that a shop may give',
      props: {
        brand: {
          ...noBrand,
          site: 'https://workshop.example/',
          booking: 'https://workshop.example/visit',
          contact: 'ask at the counter',
        },
        shop: 'Ash & Sons',
        corrections: 'errors@workshop.example',
      },
      shows: ['ask at the counter', 'Our own site: workshop.example', 'Book a visit'],
      hides: ['mailto:'],
    },
    {
      name: 'only where errors are reported',
      props: { brand: noBrand, shop: 'Ash & Sons', corrections: 'errors@workshop.example' },
      shows: ['href="mailto:errors@workshop.example"'],
      hides: ['Our own site', 'Book'],
    },
  ],
};
