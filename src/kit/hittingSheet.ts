import { createHash } from 'node:crypto';
import { dateInWords } from '../prose/date.ts';
import { nounOf } from '../prose/noun.ts';
import { capitalised } from '../prose/words.ts';
import { escapeXml } from '../prose/escapeXml.ts';
import { hittingSheetStyle } from './hittingSheetStyle.ts';

/** What a hitting sheet is printed from. */
export interface HittingPlan {
  readonly title: string;
  /** The day of the plan, ISO. */
  readonly date: string;
  /** The noun of what differs. */
  readonly varied: string;
  /** The metric that was chosen, in words. */
  readonly metric: string;
  readonly matters: string;
  readonly shotsEach: number;
  /** The order in words. */
  readonly turns: string;
  readonly seed: string;
  readonly warmUp: string;
  readonly exclusionRule: string;
  readonly stoppingRule: string;
  /** In the order of hitting. */
  readonly order: readonly { readonly shot: number; readonly round: number; readonly label: string }[];
}

const warmUpBoxes = 15;
/** An even number: they stand in two halves. */
const spareRows = 4;
/** With no more shots than this one table is short enough to be read from where the ball lies. */
const mostInOneTable = 15;

/** General words only: what a place demands, and whom pain sends to whom, is not for a sheet to say. */
const before = [
  'Grips, heads, shafts, net and mat looked over; nothing loose or cracked',
  'Nobody near the swing or the net; the rules of the place kept',
  'Monitor set up and checked with a shot of a club outside the test',
  'The same ball, tee and target for every shot',
  'Settings, lofts and lengths written down as they are',
  'The hitter does not hear the numbers between shots',
] as const;

const conditions = [
  'Day and time',
  'Place, surface, tee',
  'Ball: model, new or used',
  'Temperature, wind',
  'Monitor and its settings',
  'Hitter: hand, handicap band (no name)',
] as const;

/**
 * The sheet to hit by, as one HTML file that needs no other and prints on A4 or Letter: what to look over, warm-up,
 * room for notes; then the rules with the order under them, boxes to tick, room for outside events and shots hit again.
 * Three dozen shots fit on one page of A4, two dozen on one of Letter; with more the rules and the order have a page of
 * their own.
 */
export function hittingSheet(plan: HittingPlan): string {
  const style = hittingSheetStyle;
  const hash = createHash('sha256').update(style).digest('base64');
  const noun = nounOf(plan.varied);
  const title = escapeXml(plan.title);
  const halves = halvesOf(plan);
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'sha256-${hash}'">
<title>Hitting sheet: ${title}</title>
<style>${style}</style>
</head>
<body>
<header>
<h1>${title}</h1>
<p>Hitting sheet. Planned on ${dateInWords(plan.date)}: ${plan.shotsEach} shots with each of ${new Set(plan.order.map(({ label }) => label)).size} ${escapeXml(noun.many)}, ${escapeXml(plan.turns)}, drawn from seed <code>${escapeXml(plan.seed)}</code>. Judged on ${escapeXml(plan.metric)}; a gap of ${escapeXml(plan.matters)} matters.</p>
</header>
<main>
<div class="beside">
<section>
<h2>Before</h2>
<ul class="boxes">
${before.map((text, index) => `<li>${box(`before-${index + 1}`)} <label for="before-${index + 1}">${text}</label></li>`).join('\n')}
</ul>
</section>
<section>
<h2>Write down</h2>
<dl class="lines">
${conditions.map((text) => `<div><dt>${text}</dt><dd></dd></div>`).join('\n')}
</dl>
</section>
</div>
<section>
<h2>Warm-up</h2>
<p>${escapeXml(capitalised(plan.warmUp))}. These swings are not counted. Stop if anything hurts, and rest whenever you like. Then start a new session on the monitor, so that its first shot is shot 1 below; else write down its number of that shot: <span class="blank"></span></p>
<p class="warm-up">${Array.from({ length: warmUpBoxes }, (_, index) => box(`warm-up-${index + 1}`, `Warm-up swing ${index + 1}`)).join(' ')}</p>
</section>
<section class="notes">
<h2>Notes</h2>
<p>Breaks, what the hitter felt, anything that was not as planned.</p>
</section>
<section class="order">
<h2>The order</h2>
<ul class="rules">
<li><strong>Left out by one rule:</strong> ${escapeXml(plan.exclusionRule)}.</li>
<li><strong>The end:</strong> ${escapeXml(plan.stoppingRule)}. Nobody adds shots because of how it looks.</li>
<li>One row a shot, in the order of their numbers. Tick it when it is hit. Write an outside event (a ball that split, a noise, a reading that failed) beside the shot at once, and hit that ${escapeXml(noun.one)} again at the end of its round, in a spare row.</li>
</ul>
<div class="halves">
${halves.map((half) => orderTable(half, noun.one)).join('\n')}
</div>
<h3>Hit again</h3>
<div class="halves">
${Array.from({ length: 2 }, (_, half) => againTable(half, noun.one)).join('\n')}
</div>
</section>
</main>
</body>
</html>
`;
}

type Planned = HittingPlan['order'][number];
type Round = readonly Planned[];

/** The rounds in two halves, so that twice as many fit on a sheet; in one where there are few. */
function halvesOf({ order }: HittingPlan): readonly (readonly Round[])[] {
  const rounds = [...Map.groupBy(order, ({ round }) => round).values()];
  if (order.length <= mostInOneTable) return [rounds];
  const middle = Math.ceil(rounds.length / 2);
  return [rounds.slice(0, middle), rounds.slice(middle)];
}

function orderTable(rounds: readonly Round[], noun: string): string {
  return `<table>
<thead><tr><th scope="col">Round</th><th scope="col">Shot</th><th scope="col">${escapeXml(capitalised(noun))}</th><th scope="col">Hit</th><th scope="col">Event, note</th></tr></thead>
${rounds.map(roundRows).join('\n')}
</table>`;
}

function againTable(half: number, noun: string): string {
  const rows = Array.from({ length: spareRows / 2 }, (_, index) => {
    const row = half * (spareRows / 2) + index + 1;
    return `<tr><td></td><td></td><td></td><td class="tick">${box(`again-${row}`, `Spare row ${row} hit`)}</td><td></td></tr>`;
  });
  return `<table>
<thead><tr><th scope="col">After</th><th scope="col">Shot</th><th scope="col">${escapeXml(capitalised(noun))}</th><th scope="col">Hit</th><th scope="col">Why</th></tr></thead>
<tbody>
${rows.join('\n')}
</tbody>
</table>`;
}

function roundRows(shots: Round): string {
  const rows = shots.map(({ shot, round, label }, index) => {
    const head = index === 0 ? `<th scope="rowgroup" rowspan="${shots.length}">${round}</th>` : '';
    const tick = box(`shot-${shot}`, `Shot ${shot}, ${label}, hit`);
    const changed = index > 0 && shots[index - 1]?.label !== label;
    return `<tr${changed ? ' class="change"' : ''}>${head}<td>${shot}</td><td>${escapeXml(label)}</td><td class="tick">${tick}</td><td></td></tr>`;
  });
  return `<tbody>\n${rows.join('\n')}\n</tbody>`;
}

/** A box to tick with a pen or on a screen; it needs a name where no label stands beside it. */
function box(id: string, name?: string): string {
  return `<input type="checkbox" id="${id}"${name === undefined ? '' : ` aria-label="${escapeXml(name)}"`}>`;
}
