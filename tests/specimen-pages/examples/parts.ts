import { figureCopies, reportInOtherUnits, toldTwice } from '../../../src/site/toldTwice.ts';
import { kitOf } from '../../../src/kit/kitOf.ts';
import type { Report } from '../../../src/kit/report.ts';
import type { DrawnFigure } from '../../../src/charts/figure.ts';
import { noBrand, type Logo } from '../../../src/site/brand/brand.ts';
import { chartMark } from '../../../src/prose/narrativeParts.ts';
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
        shows: ['id="apart-wide-name"', 'data-units="yards"'],
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

export const fairness: ComponentExamples = {
  component: 'Fairness',
  examples: (report) => [
    {
      name: 'of a report with little recorded',
      props: { ...withTold(report('two-heads')), which: 'not-yes' },
      shows: ['class="fairness"', 'no.', 'not recorded.'],
      hides: ['score', '>yes.<'],
    },
    {
      name: 'every check, those that are yes at the end',
      props: { ...withTold(report('two-heads')), which: 'all' },
      shows: ['id="all-fairness"', 'no.', 'not recorded.', '>yes.<'],
    },
  ],
};

export const reportLine: ComponentExamples = {
  component: 'ReportLine',
  examples: (report) => [
    {
      name: 'published',
      props: { report: report('two-heads'), level: 2, replacedBy: null },
      shows: ['24 shots', '2 March 2026', 'invented data', '<h2', 'aria-labelledby="finding-two-heads"'],
      hides: ['Withdrawn', 'Replaced'],
    },
    {
      name: 'replaced',
      props: { report: report('two-heads-before'), level: 2, replacedBy: 'Two driver heads, one shaft' },
      shows: ['Replaced', 'A newer report, “Two driver heads, one shaft”, replaces it. It said: '],
    },
    {
      name: 'withdrawn, without its answer',
      props: { report: report('taken-back'), level: 2, replacedBy: null },
      shows: ['Withdrawn 20 February 2026.'],
      hides: ['carried farther', '<svg'],
    },
  ],
};

export const corrections: ComponentExamples = {
  component: 'Corrections',
  examples: (report) => [
    {
      name: 'a correction with old and new, a reply whole, an address',
      props: {
        front: report('two-heads').source.front,
        contact: 'corrections@example.test',
        slug: 'two-heads',
        versions: [],
        moved: [],
      },
      shows: ['It said: 9 degrees. It now says: 10.5 degrees.', 'another shaft &amp; say so', 'mailto:'],
    },
    {
      name: 'none so far, nowhere to write to, an answer that moved',
      props: {
        front: report('five-heads').source.front,
        contact: null,
        slug: 'five-heads',
        versions: [],
        moved: [{ since: '2026-04-05', then: 'Alder and Birch: no gap that matters.', now: null }],
      },
      shows: ['is not recorded', '5 April 2026', 'we ask this no more.'],
    },
  ],
};

export const citeThis: ComponentExamples = {
  component: 'CiteThis',
  examples: (report) => [
    {
      name: 'a report that was corrected',
      props: { report: report('two-heads') },
      shows: [
        'Cite this report.',
        ': Two driver heads, one shaft. Hit 2 March 2026',
        'Version 1.0.1, corrected ',
      ],
      hides: ['undefined', 'null'],
    },
  ],
};

export const narrative: ComponentExamples = {
  component: 'Narrative',
  examples: (report) => {
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
  },
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
          report: own,
          item,
          copies: [
            { system: own.telling.system, of: item },
            { system: other.telling.system, of: same },
          ],
          leads: true,
        },
        shows: [
          'The one to take first.',
          'download="six-shafts-apart.png"',
          'download="six-shafts-apart.csv"',
          'data-copy="short caption"',
          'data-copy="alternative text"',
          'data-copy="numbers"',
          'href="/reports/six-shafts/embed/apart/"',
          'data-units="yards" hidden',
        ],
        hides: ['undefined', 'NaN'],
      },
      {
        name: 'that is not the first to take',
        props: { report: own, item, copies: [{ system: own.telling.system, of: item }], leads: false },
        shows: ['data-copy="short caption"'],
        hides: ['The one to take first.', 'data-units='],
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
      shows: ['ask at the counter', 'Our own site: workshop.example', 'Book a time'],
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
