import { describe, expect, test } from 'vitest';
import { pooledGap } from '../../src/findings/pooledGap.ts';
import { pairRecords } from '../../src/kit/pairRecords.ts';
import { meetingsFigure } from '../../src/kit/meetingsFigure.ts';
import { pooledSentences } from '../../src/kit/pairWords.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { meanInterval, nextValueInterval } from '../../src/stats/meanInterval.ts';
import { randomEffects } from '../bench/simulation/randomEffects.ts';
import { contentFolder } from '../commands/contentFolder.ts';
import reference from '../reference/findings/pooling.json' with { type: 'json' };

type Session = (typeof reference.sessions)[number];
type SessionReport = Session['reports'][number];

const near = (own: number, other: number | undefined, scale = 1): void =>
  expect(Math.abs(own - (other ?? NaN)) / Math.max(1, scale)).toBeLessThan(1e-8);
const nearEnds = (own: readonly number[] | null, other: readonly number[] | null, scale = 1): void => {
  expect(own === null).toBe(other === null);
  own?.forEach((end, index) => near(end, other?.[index], scale));
};

/** A report in front matter and shots, as a shop would have it; the first of the set is the oldest. */
function filesOf(report: SessionReport, place: number): readonly (readonly [path: string, text: string])[] {
  const { slug, golfers, golfer, head, carry, out } = report;
  const heads = [...new Set(head)].toReversed().map((name) => name.toLowerCase());
  const front = [
    '---',
    `title: "Heads: ${slug}"`,
    `date: 2026-0${place + 1}-10`,
    'question: Does the new head carry farther than the old one?',
    'varied: head',
    'held: {shaft: one 60 g shaft}',
    `contenders: [${heads.join(', ')}]`,
    'primary: carry',
    'matters: {carry: 5 yd}',
    'session: shots.csv',
    'hitters:',
    ...golfers.map((id) => `  ${id}: {role: customer, hand: right, consent: yes}`),
    ...(out > 0
      ? [
          `exclusions: [{contender: ${head[out - 1]?.toLowerCase() ?? ''}, shot: ${out}, rule: topped, reason: hit the mat first}]`,
        ]
      : []),
    'interests: {paid_by: the shop, commission_or_gifts: none, seen_before: nobody outside the shop}',
    'invented_data: yes',
    'status: published',
    '---',
    '',
  ];
  const rows = carry.map(
    (value, index) => `${index + 1},${golfer[index] ?? ''},${head[index] ?? ''},${value}`,
  );
  return [
    [`reports/${slug}/report.md`, front.join('\n')],
    [`reports/${slug}/shots.csv`, ['Shot,Hitter,Head,Carry (yd)', ...rows, ''].join('\n')],
  ];
}

function groupOf({ reports }: Pick<Session, 'reports'>) {
  const folder = contentFolder({
    'shop.yaml': 'name: Shop\n',
    ...Object.fromEntries(
      ['Alder', 'Birch', 'Cedar'].map((label) => [
        `contenders/${label.toLowerCase()}.yaml`,
        `label: ${label}\nsupplied_by: our stock\nsold_here: new\nbuild: {head: ${label} head, loft: 9°}\n`,
      ]),
    ),
    ...Object.fromEntries(reports.flatMap(filesOf)),
  });
  const { reports: loaded, problems } = loadSite(folder);
  expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  const [group, ...others] = pairRecords(loaded).get('alder-and-birch')?.groups ?? [];
  if (group === undefined || others.length > 0) throw new Error('not one group');
  return group;
}

/** R: t.test and lm on gaps that R worked out from the same shots (tests/reference/findings/pooling.R). */
describe.each(reference.sessions.map((session) => [session.name, session] as const))(
  '%s',
  (_name, session) => {
    const group = groupOf(session);
    const { pooled, meetings } = group;

    test('each report has the gap of its own shots, to 1e-8', () => {
      for (const { slug, gap } of session.reports) {
        const own = meetings.find(({ report }) => report.source.slug === slug);
        expect(own?.pair.credit, slug).toBe('contender');
        near(own?.pair.estimate ?? NaN, gap);
      }
    });

    test('together they are what R makes of them, to 1e-8', () => {
      if (pooled.kind === 'none') throw new Error(pooled.why);
      near(pooled.estimate, session.pooled.estimate);
      nearEnds(pooled.ci, session.pooled.ci);
      if (pooled.kind === 'golfers') {
        expect(pooled.parties).toBe(session.pooled.k);
        near(pooled.withoutFirst?.estimate ?? NaN, session.withoutFirst?.estimate);
        nearEnds(pooled.withoutFirst?.ci ?? null, session.withoutFirst?.ci ?? null);
        if (pooled.newGolfer !== null) nearEnds(pooled.newGolfer, session.pooled.another);
        expect(pooled.newGolfer !== null).toBe(pooled.golfers >= 6 && pooled.golfers === pooled.parties);
      } else {
        expect(session.withoutFirst).toBeNull();
      }
    });

    test('words and chart say of how many golfers, neither more nor fewer', () => {
      const [told = '', others = ''] = pooledSentences(group);
      const figure = meetingsFigure(group, 'meetings-1');
      if (figure.kind !== 'drawn') throw new Error(figure.why);
      const rows = figure.table.rows.map(([name = '']) => name).slice(meetings.length);
      expect({ told: told.split(':')[0], others: others.split(/ anything|[:.]/)[0], rows }).toEqual(
        {
          'seven golfers, a report each': {
            told: 'All seven golfers combined, each counting alike',
            others: "Another golfer's own test could show",
            rows: ['All seven golfers', 'Another golfer'],
          },
          'golfers who hit again, or together': {
            told: 'Six golfers in four groups that share no golfer, each group counting alike',
            others: 'Other golfers cannot be judged from so few',
            rows: ['All four groups'],
          },
          'one golfer, four days': {
            told: 'This golfer, four days',
            others: 'What holds for this golfer need not hold for you',
            rows: ['This golfer, four days'],
          },
        }[session.name],
      );
      // The newest report of the first set has five shots with each; together they are no first look.
      expect(told).not.toContain('First look');
    });
  },
);

/** The R package metafor 3.8-1, in the same script: weighted pooling, and unweighted as its special case. */
describe.each(reference.sets.map((set) => [set.name, set] as const))('%s studies', (_name, set) => {
  const scale = Math.max(...set.estimates.map(Math.abs));

  test('unweighted, each alike, as metafor with one sampling variance for all', () => {
    const own = meanInterval(set.estimates, 0.95);
    near(own.estimate, set.alike.estimate, scale);
    nearEnds(own.ci, set.alike.ci, scale);
    near(own.p, set.alike.p);
    nearEnds(nextValueInterval(set.estimates, 0.95), set.alike.another, scale);
    const pooled = pooledGap(
      set.estimates.map((estimate, index) => ({
        estimate,
        hitters: [`g${index}`],
        date: `2026-01-${String(index + 1).padStart(2, '0')}`,
      })),
      { matters: 5, better: 'more' },
    );
    // Two reports are never put together.
    expect(pooled.kind).toBe(set.estimates.length < 3 ? 'none' : 'golfers');
    if (pooled.kind === 'golfers') nearEnds(pooled.ci, set.alike.ci, scale);
  });

  test('weighted, as metafor does it', () => {
    const { companion } = set;
    const own = randomEffects(
      set.estimates.map((estimate, index) => ({ estimate, standardError: set.standardErrors[index] ?? NaN })),
      0.95,
    );
    near(own.between, companion.between, companion.between);
    near(own.heterogeneity.q, companion.q, companion.q);
    near(own.heterogeneity.p, companion.qP);
    near(own.wald.estimate, companion.estimate, scale);
    near(own.wald.standardError, companion.standardError);
    nearEnds(own.wald.ci, companion.wald, scale);
    nearEnds(own.hartungKnapp.ci, companion.hartungKnapp, scale);
    near(own.hartungKnapp.p, companion.hartungKnappP);
    nearEnds(own.prediction, companion.prediction, scale);
  });
});
