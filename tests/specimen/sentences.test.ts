import { format } from 'prettier';
import { expect, test } from 'vitest';
import type { OverlayId } from '../../src/findings/findings.ts';
import type { Telling } from '../../src/prose/telling.ts';
import { toldChecks } from '../../src/prose/english/checks.ts';
import { metricIds, metrics, type MetricId } from '../../src/trade/metrics.ts';
import { changes, groups } from './examples.ts';
import {
  answerSentences,
  cautionSentences,
  chanceSentence,
  pairNumbers,
  pairSentences,
  reachSentences,
} from '../prose/said.ts';
import { metricOf, tellingFor, waysToComeOut, type Told } from '../prose/tellings.ts';

/** Every sentence about a difference, for every way it can come out and every metric, held beside what was read aloud. */

const lines: string[] = [
  '# Every sentence about a difference',
  '',
  'Invented figures. Made by `tests/specimen/sentences.test.ts`; do not edit.',
];
const heading = (text: string, depth = 2): void => void lines.push('', `${'#'.repeat(depth)} ${text}`, '');
const item = (label: string, words: string): void => {
  if (words !== '') lines.push(`- ${label}: ${escaped(words)}`);
};
const escaped = (text: string): string => text.replace(/([*_<>[\]`])/g, '\\$1');

function tell(told: Told, telling: Telling): void {
  const [metric] = telling.findings.metrics;
  const [pair] = metric?.pairs ?? [];
  if (metric === undefined || pair === undefined) throw new Error(`no pair of ${told.metric}`);
  item('answer', answerSentences(metric, telling).join(' '));
  item('in full', pairSentences(metric, telling).at(-1) ?? '');
  item('numbers', pairNumbers(metric, telling).join(' '));
}

heading('Carry: every way to come out');
for (const { name, told, design } of waysToComeOut) {
  heading(name, 3);
  const whole = { metric: 'carry' as const, ...told };
  tell(whole, tellingFor([metricOf(whole)], design === undefined ? {} : { design }));
}

heading('Cautions');
const everyOverlay: readonly OverlayId[] = [
  'one-after-another',
  'order-unknown',
  'order-lever',
  'order-drift',
  'order-few-visits',
  'depends-on-left-out',
  'visits-alike',
  'mixed-with-swing',
  'leans',
  'rests-on-one-shot',
  'near-device',
  'modelled-reading',
  'few-shots',
  'found-too-big',
  'one-hitter',
  'few-hitters',
  'one-example',
  'not-planned',
];
for (const overlay of everyOverlay) {
  const told = { metric: 'carry' as const, verdict: 'clear' as const, overlays: [overlay] };
  const [caution = '(none of its own)'] = cautionSentences(tellingFor([metricOf(told)]));
  item(overlay, caution);
}

heading('What the test could see, and chance');
for (const varied of ['head', 'grooves', 'brand of ball', 'flex']) {
  const metric = metricOf({ metric: 'carry', verdict: 'too-close', overlays: ['found-too-big'] });
  const telling = tellingFor([metric], { varied });
  item(varied, [chanceSentence(metric, telling), ...reachSentences(metric, telling)].join(' '));
}
const longest = metricOf(
  { metric: 'carry', verdict: 'too-close' },
  { shotsNeeded: [450, 1000], shotsToShowLevel: 1000 },
);
item('too many to hit', reachSentences(longest, tellingFor([longest])).join(' '));
const sure = metricOf({ metric: 'carry', verdict: 'clear' }, { detectable: 4, shotsNeeded: [5, 10] });
item('enough shots', reachSentences(sure, tellingFor([sure])).join(' '));

heading('Would the answer change?');
for (const { name, told, metric = {} } of changes) {
  const own = metricOf(told, metric);
  const all = toldChecks(own, tellingFor([own])).flatMap((change) => change.lines);
  item(name, all.join(' '));
}

heading('More than three contenders');
for (const { name, metric } of groups) item(name, answerSentences(metric, tellingFor([metric])).join(' '));

heading('Every metric, in yards and miles an hour');
const verdicts = ['clear', 'size-unsure', 'maybe-small', 'small', 'level', 'too-close'] as const;
function everyMetric(system: Telling['system'], ids: readonly MetricId[], better?: Told['better']): void {
  for (const id of ids) {
    heading(`${metrics[id].name}${better === undefined ? '' : `, ${better} is better`}`, 3);
    for (const verdict of verdicts) {
      const told: Told = { metric: id, verdict, ...(better === undefined ? {} : { better }) };
      const metric = metricOf(told);
      const telling = tellingFor([metric], { system });
      item(verdict, pairSentences(metric, telling).at(-1) ?? '');
    }
  }
}
everyMetric('yards', metricIds);
heading('Where less is better');
everyMetric('yards', ['spin_rate', 'carry', 'descent_angle'], 'less');
heading('In metres and kilometres an hour');
everyMetric('metres', ['carry', 'ball_speed', 'apex', 'strike_up']);

test('every sentence is the one that was read', async () => {
  const made = await format(`${lines.join('\n')}\n`, { parser: 'markdown', printWidth: 110 });
  await expect(made).toMatchFileSnapshot('sentences.md');
});
