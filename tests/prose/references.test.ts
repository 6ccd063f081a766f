import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { narrativeCharts } from '../../src/charts/narrativeCharts.ts';
import { formNames, narrativeForms } from '../../src/prose/narrativeForms.ts';
import { chartsInNarrative, narrativeParts } from '../../src/prose/narrativeParts.ts';
import { renderNarrative } from '../../src/prose/narrative.ts';
import { resolveReference, valueText } from '../../src/prose/references.ts';
import type { Telling } from '../../src/prose/telling.ts';
import { around, reportOf } from '../findings/reportOf.ts';

const report = reportOf({
  shots: {
    'Carry (yd)': {
      alder: around(237.4),
      birch: around(231.5).toReversed(),
      cedar: [...around(225.6).slice(6), ...around(225.6).slice(0, 6)],
    },
    'Spin Rate (rpm)': { alder: around(2600, 90), birch: around(2640, 90), cedar: around(4500, 90) },
  },
});

const charts = Object.keys(narrativeCharts(report.findings));

function value(reference: string, telling: Telling = report.telling): string {
  const resolved = resolveReference(reference.split(' '), telling, charts);
  return resolved.kind === 'unknown' ? `${resolved.expected}. ${resolved.cure}` : valueText(resolved);
}

describe('a value of the narrative', () => {
  // A step of a yard for spreads and limits; averages a digit finer, as 237 less 226 would not be the 12 of the answer.
  test.each([
    ['mean carry alder', '237.4 yards'],
    ['median carry cedar', '225.6 yards'],
    ['min carry alder', '230.4 yards'],
    ['max carry alder', '245.4 yards'],
    ['max spin_rate alder', '3,320 rpm'],
    ['max spin alder', '3,320 rpm'],
    ['max Total Spin alder', '3,320 rpm'],
    ['mean Carry Distance alder', '237.4 yards'],
    ['sd carry alder', '5 yards'],
    ['shots alder', '12'],
    ['apart carry alder cedar', 'about 12 yards, likely 7 to 17'],
    ['apart carry cedar alder', 'about 12 yards, likely 7 to 17'],
    ['answer carry alder cedar', 'Alder carried farther than Cedar: about 12 yards, likely 7 to 17'],
    [
      'answer spin_rate alder birch',
      'we cannot tell whether Birch or Alder spun more: anything from 500 rpm for Birch to 400 for Alder',
    ],
    ['apart spin_rate alder birch', 'anything from 500 rpm for Birch to 400 for Alder'],
  ])('%s', (reference, words) => {
    expect(value(reference)).toBe(words);
  });

  test('in metres by its own step', () => {
    expect(value('apart carry alder cedar', { ...report.telling, system: 'metres' })).toBe(
      'about 11 metres, likely 6 to 16',
    );
  });

  test('of two that were not judged nothing is apart, and the answer says why', () => {
    const { telling } = reportOf({
      shots: { 'Carry (yd)': { alder: around(237), birch: around(231), cedar: [225, 226, 224, 227] } },
    });
    expect(value('apart carry alder cedar', telling)).toContain('apart of two that were judged');
    expect(value('answer carry alder cedar', telling)).toBe('we did not judge Cedar: four shots are too few');
  });
});

test('an answer that begins a sentence begins with a capital', () => {
  const html = (text: string): string =>
    renderNarrative({ file: 'report.md', text, firstLine: 1 }, report.telling, {}, []).html;
  const apart = '{{ answer spin_rate alder birch }}';
  expect(html(`${apart}.`)).toMatch(/^<p>We cannot tell /);
  expect(html(`It was windy. ${apart}.`)).toContain('windy. We cannot tell ');
  expect(html(`So it was: ${apart}.`)).toContain('was: we cannot tell ');
  expect(html(`Neither gained, as ${apart}.`)).toContain('as we cannot tell ');
});

describe('what cannot be printed', () => {
  test.each([
    ['best carry alder', /There is no "best": of more shots the best is better/],
    [
      'mean ball speed alder',
      /of this report: carry, spin_rate; alder, birch, cedar\. Write one that is there/,
    ],
    ['mean back spin alder', /Write one that is there/],
    ['gap carry alder birch', /Did you mean {{ apart carry alder birch }}\?/],
    ['average carry alder', /Did you mean {{ mean carry alder }}\?/],
    ['mean cary alder', /Did you mean {{ mean carry alder }}\?/],
    ['mean carry aldr', /Did you mean {{ mean carry alder }}\?/],
    ['chart price', /no chart of prices: they stand in the table of all averages, side by side/],
    ['chart apartt', /Did you mean {{ chart apart }}\?/],
    ['mean carry', /Write one that is there/],
    ['mean carry alder birch', /Write one that is there/],
    ['apart carry alder', /Write one that is there/],
    ['apart carry alder alder', /Write one that is there/],
    ['table', /Write one that is there/],
    ['mix carry alder', /Write one that is there/],
    ['', /one of: mean METRIC NAME, median METRIC NAME, .* chart CHART\. Write one/],
  ])('{{ %s }}', (reference, told) => {
    expect(value(reference)).toMatch(told);
  });

  test('a name with another number in it is another thing', () => {
    const numbered = reportOf({
      front: {
        contenders:
          '{head-9: {label: Head 9, supplied_by: our stock, sold_here: new}, head-10: {label: Head 10, supplied_by: our stock, sold_here: new}}',
      },
      shots: { 'Carry (yd)': { 'head-9': around(237), 'head-10': around(231) } },
    });
    expect(value('mean carry head-8', numbered.telling)).not.toContain('Did you mean');
    expect(value('mean carry haed-9', numbered.telling)).toContain('{{ mean carry head-9 }}');
  });
});

describe('a suggestion', () => {
  const { findings } = report;
  const ids = findings.contenders.map(({ id }) => id);
  const metric = fc.constantFrom(['carry'], ['spin_rate'], ['spin'], ['carry', 'distance']);
  const valid = fc
    .constantFrom(...formNames)
    .chain((form) =>
      fc
        .tuple(
          ...narrativeForms[form].takes.map((part) =>
            part === 'METRIC'
              ? metric
              : fc.constantFrom(...(part === 'CHART' ? charts : ids)).map((word) => [word]),
          ),
        )
        .map((parts) => [form, ...parts.flat()]),
    );
  const letters = fc.constantFrom(...'abcdefghijklmnopqrstuvwxyz_-1 ');
  const mistyped = fc
    .tuple(valid, fc.nat(60), fc.constantFrom('drop', 'double', 'put', 'swap'), letters)
    .map(([words, at, how, letter]) => {
      const text = words.join(' ');
      const i = at % text.length;
      const [before, own, next, after] = [
        text.slice(0, i),
        text[i] ?? '',
        text[i + 1] ?? '',
        text.slice(i + 2),
      ];
      const changed = {
        drop: before + next + after,
        double: before + own + own + next + after,
        put: before + letter + next + after,
        swap: before + next + own + after,
      }[how as 'drop' | 'double' | 'put' | 'swap'];
      return { words, typed: changed.split(/\s+/).filter((word) => word !== '') };
    });
  const suggested = (cure: string): readonly string[] | null =>
    /{{ (.*?) }}/.exec(cure)?.[1]?.split(' ') ?? null;
  const shown = (words: readonly string[]): string =>
    JSON.stringify(resolveReference(words, report.telling, charts));

  test('is always a reference itself, and never another figure than the one that was mistyped', () => {
    let counted = 0;
    fc.assert(
      fc.property(mistyped, ({ words, typed }) => {
        const resolved = resolveReference(typed, report.telling, charts);
        if (resolved.kind !== 'unknown') return;
        const other = suggested(resolved.cure);
        if (other === null) return;
        counted += 1;
        expect(resolveReference(other, report.telling, charts).kind).not.toBe('unknown');
        const sameWords = other.every((word, at) => word === words[at]);
        // Two may be mistyped into one another's names; then nothing is suggested.
        expect(sameWords || shown(other) === shown(words), `${typed.join(' ')}: ${other.join(' ')}`).toBe(
          true,
        );
      }),
      { numRuns: 3000 },
    );
    expect(counted).toBeGreaterThan(300);
  });

  test('of words from anywhere resolves as well', () => {
    const word = fc.constantFrom(
      ...formNames,
      ...ids,
      ...charts,
      'carry',
      'spin',
      'total',
      'best',
      'gap',
      'aldr',
      'x',
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 5 }), (typed) => {
        const resolved = resolveReference(typed, report.telling, charts);
        const other = resolved.kind === 'unknown' ? suggested(resolved.cure) : null;
        if (other !== null) expect(resolveReference(other, report.telling, charts).kind).not.toBe('unknown');
      }),
    );
  });
});

describe('a value in its sentence', () => {
  const rendered = (text: string, telling: Telling = report.telling) =>
    renderNarrative({ file: 'report.md', text, firstLine: 1 }, telling, narrativeCharts(report.findings), []);
  const metres: Telling = { ...report.telling, system: 'metres' };
  const mean = '{{ mean carry alder }}';

  test.each([
    [`It went ${mean} yards here.`, 'It went 237.4 yards here.', 'It went 217.1 metres here.'],
    [`It went ${mean} metres here.`, 'It went 237.4 yards here.', 'It went 217.1 metres here.'],
    [`It went ${mean}yd, no more.`, 'It went 237.4 yards, no more.', 'It went 217.1 metres, no more.'],
    [
      `It went **${mean}** yards.`,
      'It went <strong>237.4 yards</strong>.',
      'It went <strong>217.1 metres</strong>.',
    ],
    [`It went ${mean}\nyards.`, 'It went 237.4 yards.', 'It went 217.1 metres.'],
    ['It spun {{ max spin alder }} rpm.', 'It spun 3,320 rpm.', 'It spun 3,320 rpm.'],
    [
      'They were {{ apart carry alder cedar }} yards apart.',
      'They were about 12 yards, likely 7 to 17 apart.',
      'They were about 11 metres, likely 6 to 16 apart.',
    ],
  ])('%s: its unit is printed once, and the shop is told', (text, inYards, inMetres) => {
    const one = (html: string): string =>
      html
        .replace(/<\/?p>/g, '')
        .replace(/\s+/g, ' ')
        .trim();
    expect(one(rendered(text).html)).toBe(inYards);
    expect(one(rendered(text, metres).html)).toBe(inMetres);
    expect(rendered(text).problems).toMatchObject([
      {
        kind: 'unit-repeated',
        severity: 'warning',
        line: 1,
        cure: expect.stringMatching(/^Take "\w+" out; the page/),
      },
    ]);
  });

  test('before a noun it is an adjective', () => {
    expect(rendered(`A ${mean}-yard shot.`).html).toContain('A 237.4-yard shot.');
    expect(rendered(`A ${mean}-yard shot.`, metres).html).toContain('A 217.1-metre shot.');
    expect(rendered(`A ${mean}-yard shot.`).problems).toEqual([]);
  });

  test.each([
    [`It went ${mean} in the morning.`],
    [`It went ${mean} rpm, which is no distance.`],
    [`It went ${mean} moreover.`],
    ['We hit {{ shots alder }} yards of netting.'],
    [`${mean} \`yards\``],
  ])('%s: nothing else is taken away', (text) => {
    const { html, problems } = rendered(text);
    expect(problems).toEqual([]);
    expect(html).toContain(text.replace(/`/g, '').split('}} ')[1]?.split(' ')[0] ?? '?');
  });

  const answer = '{{ answer spin_rate alder birch }}';
  const told = 'anything from 500 rpm for Birch to 400 for Alder';
  test.each([
    [`So: ${answer}`, `${told}.</p>`],
    [`${answer} Its spin was odd.`, `${told}. Its spin`],
    [`So: ${answer}.`, `${told}.</p>`],
    [`As ${answer}, we hit more.`, `${told}, we hit`],
    [`We say that ${answer} and leave it.`, `${told} and leave it`],
    [`So: ${answer}\n\nMore.`, `${told}.</p>`],
  ])('%s: an answer stops where nothing goes on', (text, html) => {
    expect(rendered(text).html).toContain(html);
  });

  test('in a heading, an item or a cell nothing stops', () => {
    expect(rendered(`## So: ${answer}`).html).toContain(`${told}</h3>`);
    expect(rendered(`- So: ${answer}`).html).toContain(`${told}</li>`);
    expect(rendered(`| A |\n|---|\n| ${answer} |`).html).toContain(`${told}</td>`);
  });
});

describe('a chart', () => {
  const rendered = (text: string) =>
    renderNarrative(
      { file: 'report.md', text, firstLine: 1 },
      report.telling,
      narrativeCharts(report.findings),
      [],
    );

  test('alone in its paragraph has its place there, once', () => {
    const { html, problems } = rendered(
      'Before.\n\n{{ chart shots }}\n\nBetween, see {{ chart shots }}.\n\n{{ chart shots }}\n\n{{chart order}}\n',
    );
    expect(problems).toEqual([]);
    expect(narrativeParts(html)).toEqual([
      { kind: 'html', html: '<p>Before.</p>\n' },
      { kind: 'chart', chart: 'shots' },
      {
        kind: 'html',
        html: '\n<p>Between, see <a href="#shots">All the shots</a>.</p>\n<p><a href="#shots">All the shots</a></p>\n',
      },
      { kind: 'chart', chart: 'order' },
    ]);
    expect(chartsInNarrative(html)).toEqual(['shots', 'order']);
  });

  test('the lead chart stays under the answer', () => {
    const { html } = rendered('{{ chart apart }}');
    expect(html).toBe('<p><a href="#apart">How far apart?</a></p>\n');
  });

  test.each(['See {{ chart shots }}.', '- {{ chart shots }}', '> {{ chart shots }}', '## {{ chart shots }}'])(
    '%s: a link',
    (text) => {
      const { html } = rendered(text);
      expect(chartsInNarrative(html)).toEqual([]);
      expect(html).toContain('<a href="#shots">All the shots</a>');
    },
  );

  test('nobody else can write its mark', () => {
    expect(chartsInNarrative(rendered('<!--chart shots-->\n\ntext <!--chart shots-->').html)).toEqual([]);
  });

  test('of a second main measure is named by it', () => {
    const two = reportOf({
      front: { primary: '[carry, spin_rate]' },
      shots: {
        'Carry (yd)': { alder: around(237), birch: around(231), cedar: around(225) },
        'Spin Rate (rpm)': { alder: around(2600, 90), birch: around(2640, 90), cedar: around(4500, 90) },
      },
      narrative: '{{ chart shots-spin-rate }}',
    });
    expect(chartsInNarrative(two.narrativeHtml)).toEqual(['shots-spin-rate']);
    expect(two.figures.map(({ id }) => id)).toEqual(
      expect.arrayContaining(
        Object.keys(narrativeCharts(two.findings)).filter(
          (id) => id.startsWith('apart') || id.startsWith('shots'),
        ),
      ),
    );
  });
});
