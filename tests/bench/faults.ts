/**
 * Puts one fault after another into the code by hand's reach (a condition turned, two numbers exchanged, a caution of one
 * pair told of another), runs the tests that guard it, and says which faults no test found. Run by hand in a clone, since
 * it edits `src/`; with arguments only for faults in files whose path holds one of them:
 *
 *   node tests/bench/faults.ts findings/credit prose/
 */
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';

interface Fault {
  readonly file: string;
  readonly from: string;
  readonly to: string;
  /** Tests that guard it. */
  readonly guards: readonly string[];
}

const ofProse = ['tests/prose', 'tests/kit'];
const fault = (file: string, from: string, to: string, ...guards: readonly string[]): Fault => ({
  file: `src/${file}`,
  from,
  to,
  guards: guards.length === 0 ? ofProse : guards.map((guard) => `tests/${guard}.test.ts`),
});

const faults: readonly Fault[] = [
  fault('prose/printSteps.ts', '(away ? Math.ceil(steps) : Math.floor(steps))', 'Math.round(steps)'),
  fault(
    'prose/printSteps.ts',
    'size > threshold && rounded <= threshold',
    'size > threshold && rounded < threshold',
  ),
  fault('prose/printSteps.ts', 'return finer.find(agrees) ?? step;', 'return step;'),
  fault('prose/printSteps.ts', 'Math.max(...(halfWidths.length', 'Math.min(...(halfWidths.length'),
  fault('prose/pairAnswer.ts', "by === 'less' ? -1 : 1", "by === 'less' ? 1 : -1"),
  fault('prose/pairAnswer.ts', ': [-high, -low]', ': [-low, -high]'),
  fault('prose/pairAnswer.ts', 'const behind = ahead === a ? b : a;', 'const behind = b;'),
  fault('prose/answers.ts', "status === 'clear' || status === 'size-uncertain'", "status === 'clear'"),
  fault('prose/answers.ts', 'behind.length > ahead.length', 'behind.length < ahead.length'),
  fault('prose/answers.ts', 'Math.abs(estimate) < surelyMoreM', 'Math.abs(estimate) > surelyMoreM'),
  fault('prose/leaders.ts', 'leaders.filter(isAhead)', 'leaders.slice(0, 1)'),
  fault('prose/leaders.ts', '!isAhead(id) && !isBehind(id)', '!isAhead(id)'),
  fault('prose/cautions.ts', "verdict !== 'not-judged' && overlays", 'overlays', 'prose/cautions'),
  fault('prose/cautions.ts', 'if (own.metric !== about.metric) return false;', '', 'prose/cautions'),
  fault('prose/cautions.ts', 'ids.includes(id) ? excluded : 0', 'excluded', 'prose/cautions'),
  fault('prose/cautions.ts', 'Math.min(...drifts)', 'Math.max(...drifts)', 'prose/cautions'),
  fault('prose/english/openCause.ts', 'hitLater === ahead ?', 'hitLater !== ahead ?'),
  fault(
    'prose/english/openCause.ts',
    'placeInRow(places.ahead, places.of)',
    'placeInRow(places.behind, places.of)',
  ),
  fault(
    'prose/english/pairInWords.ts',
    'likely: oneSidedRange(difference, printing, false)',
    'likely: estimateWords(difference, printing)',
  ),
  fault(
    'prose/english/answerWords.ts',
    "title: 'No difference that matters'",
    "title: 'Too little to matter'",
  ),
  fault(
    'prose/english/ranges.ts',
    '${limitWithUnit(upper, printing)} for ${telling.the(ahead)}',
    '${limitWithUnit(lower, printing)} for ${telling.the(ahead)}',
  ),
  fault(
    'prose/english/ranges.ts',
    "lower.kind === 'almost-nothing' ? `between",
    "lower.kind === 'number' ? `between",
  ),
  fault(
    'prose/english/sure.ts',
    "mainMeasures > 1 ? '39 of 40' : '19 of 20'",
    "mainMeasures > 1 ? '19 of 20' : '39 of 40'",
  ),
  fault(
    'prose/english/names.ts',
    "design.unit === 'hitter'\n    ? 'For golfers like these, '",
    "design.unit === 'shot'\n    ? 'For golfers like these, '",
  ),
  fault(
    'prose/sure.ts',
    'answer.ahead === first.answer.ahead',
    'answer.behind === first.answer.behind',
    'prose/sure',
  ),
  fault('prose/reach.ts', 'detectable <= matters', 'detectable >= matters'),
  fault(
    'prose/english/toldAnswer.ts',
    'cautionsFor(metric, findings)',
    'cautionsFor(findings.metrics[0] ?? metric, findings)',
    'prose/english/toldAnswer',
  ),
  fault(
    'prose/english/toldAnswer.ts',
    "first.alone.join(' ')",
    "(first.alone[0] ?? '')",
    'prose/english/toldAnswer',
  ),
  fault('findings/withinMatters.ts', '<= nearlyMatters * matters', '<= matters', 'findings/withinMatters'),
  fault(
    'kit/shotColumns.ts',
    '+ 1;\n  return String(Number(value.toFixed(decimals)));',
    ';\n  return String(Number(value.toFixed(decimals)));',
  ),
  fault('findings/credit.ts', 'Math.abs(by) >= matters / 2', 'by >= matters / 2', 'findings/credit'),
  fault(
    'findings/credit.ts',
    'gap.estimate > 0 ? without.ci[0] > 0 : without.ci[1] < 0',
    'without.ci[0] > 0',
    'findings/credit',
    'findings/mirrored',
  ),
  fault(
    'findings/credit.ts',
    'longLever && !protectedOrder && !staysWithoutDrift(facts)',
    'longLever && !protectedOrder',
    'findings/credit',
  ),
  fault(
    'findings/judgedGap.ts',
    'gap.estimate > 0 ? counted.ci[0] > 0 : counted.ci[1] < 0',
    'gap.estimate > 0 ? counted.ci[0] > 0 : true',
    'findings/credit',
    'findings/judgement',
    'findings/mirrored',
  ),
  fault(
    'findings/judgedGap.ts',
    '-matters < ci[0] && ci[1] < matters',
    'ci[1] < matters',
    'findings/severalGolfers',
    'findings/judgement',
    'findings/mirrored',
  ),
  fault(
    'findings/hitterFindings.ts',
    '1 - (1 - confidence) / pairs.length',
    'confidence',
    'findings/severalGolfers',
    'findings/judgement',
    'findings/mirrored',
  ),
  fault(
    'findings/hitterFindings.ts',
    `{ weight: -1, group: y.a },
          { weight: 1, group: y.b },`,
    `{ weight: 1, group: y.a },
          { weight: -1, group: y.b },`,
    'findings/severalGolfers',
    'findings/judgement',
  ),
  fault('findings/overlays.ts', 'isGap(verdict) && (facts', '(facts', 'findings/overlays'),
  fault(
    'findings/overlays.ts',
    'when(judged && facts.unevenlyRead',
    'when(facts.unevenlyRead',
    'findings/overlays',
  ),
  fault('findings/leadingGroup.ts', 'pair.ahead === leader &&', '', 'findings/groups', 'findings/answers'),
  fault(
    'findings/leadingGroup.ts',
    "!pair.overlays.includes('leans')",
    'true',
    'findings/groups',
    'findings/answers',
  ),
  fault(
    'findings/unevenReadings.ts',
    'Math.abs(first.count - second.count)',
    '(first.count - second.count)',
    'findings/overlays',
  ),
  fault('findings/mattersCheck.ts', ' || matters * unusualMatters < ofTrade', '', 'findings/mattersCheck'),
  fault(
    'findings/device.ts',
    'Math.min(Math.abs(gap.ci[0]), Math.abs(gap.ci[1])) <= accuracy',
    'Math.max(Math.abs(gap.ci[0]), Math.abs(gap.ci[1])) <= accuracy',
    'findings/overlays',
  ),
  fault(
    'findings/swing.ts',
    'worths.every(({ ci, margin })',
    'worths.some(({ ci, margin })',
    'findings/pathAndFace',
  ),
  fault(
    'findings/swing.ts',
    "measure === 'face_to_path' ? directed && tilted : true",
    "measure === 'face_to_path' ? directed : true",
    'findings/pathAndFace',
  ),
  fault(
    'findings/swing.ts',
    '-margin < ci[0] && ci[1] < margin',
    'ci[1] < margin',
    'findings/pathAndFace',
    'findings/equalSpeed',
  ),
  fault(
    'findings/equalSpeed.ts',
    'Math.min(...lines.map((line) => line.ci[0]))',
    'Math.max(...lines.map((line) => line.ci[0]))',
    'findings/equalSpeed',
  ),
  fault('findings/hitOrder.ts', '2 * shots(hitter) >= usual', 'true', 'findings/severalGolfers'),
  fault(
    'findings/hitOrder.ts',
    'if (!reproduced && numbersFall(session) !== null)',
    'if (false)',
    'findings/rowOrder',
  ),
  fault(
    'findings/lever.ts',
    `apart.some((places) => places < 0) &&
    apart.some((places) => places > 0)`,
    'true',
    'findings/lever',
  ),
  fault(
    'findings/straighter.ts',
    'Math.abs(meanOf(sides)) > farOffLineM',
    'meanOf(sides) > farOffLineM',
    'findings/overlays',
    'findings/judgement',
    'findings/claims',
  ),
  fault(
    'findings/pairedRounds.ts',
    'counted.length === 2 * differences.length',
    'true',
    'findings/pairedRounds',
  ),
  fault('findings/pairedRounds.ts', '(step * step) / 6', '0', 'findings/pairedRounds'),
  fault(
    'findings/turnedPair.ts',
    'ci: orNull(own.ci, turned),',
    'ci: own.ci,',
    'findings/everySession',
    'findings/severalGolfers',
    'kit/pairRecords',
  ),
  fault('findings/pairFindings.ts', '(lever > 0 ? a : b)', '(lever > 0 ? b : a)', 'findings/credit'),
  fault(
    'findings/pairFindings.ts',
    ' || (isGap(verdict) && Math.sign(estimate) !== Math.sign(gap))',
    '',
    'findings/overlays',
  ),
  fault('findings/holds.ts', 'failed >= 2 ||', 'failed >= 3 ||', 'findings/overlays', 'findings/verdict'),
  fault(
    'findings/holds.ts',
    "excludesZero && Math.abs(estimate) >= matters ? 'fails'",
    "excludesZero ? 'fails'",
    'findings/overlays',
    'findings/judgement',
  ),
  fault('findings/claims.ts', 'named === counted ? 1 : -1', '1', 'findings/claims'),
  fault(
    'findings/claims.ts',
    "lower > byAtLeast ? 'borne-out'",
    "lower >= 0 ? 'borne-out'",
    'findings/claims',
  ),
  fault(
    'findings/claims.ts',
    `'near-device',
`,
    '',
    'findings/claims',
  ),
  fault(
    'findings/claims.ts',
    'byAtLeast > 0 ? upper < byAtLeast : upper < 0',
    'upper < 0',
    'findings/claims',
  ),
  fault(
    'findings/analyse.ts',
    'byChance: (1 - confidence) * looked',
    'byChance: looked',
    'findings/judgement',
    'findings/everySession',
  ),
  fault(
    'findings/singleShot.ts',
    "better === 'less' ? of - more : more",
    'more',
    'findings/judgement',
    'findings/everySession',
  ),
  fault(
    'findings/chanceAgrees.ts',
    'Math.abs(estimate) > luck.upTo === seen',
    'Math.abs(estimate) > luck.average === seen',
    'findings/judgement',
  ),
  fault(
    'findings/plannedSequence.ts',
    'if (isIt && planned?.length === hit.length)',
    'if (isIt && planned !== null)',
    'findings/plannedSequence',
  ),
  fault('stats/visits.ts', 'return once && (own.length', 'return (own.length', 'stats/visits'),
  fault(
    'findings/thresholds.ts',
    'firstLookShots = 8',
    'firstLookShots = 7',
    'findings/answers',
    'findings/verdict',
  ),
  fault('findings/thresholds.ts', 'fewestVisits = 3', 'fewestVisits = 2', 'findings/credit'),
  fault('findings/thresholds.ts', 'leverTooLong = 0.25', 'leverTooLong = 0.35', 'findings/credit'),
  fault(
    'findings/thresholds.ts',
    'leverEven = 0.1',
    'leverEven = 0.2',
    'findings/severalGolfers',
    'findings/credit',
  ),
  fault('findings/thresholds.ts', 'unusualMatters = 3', 'unusualMatters = 4', 'findings/mattersCheck'),
  fault(
    'findings/thresholds.ts',
    'narrowConfidence = 0.9',
    'narrowConfidence = 0.8',
    'findings/credit',
    'findings/overlays',
    'findings/judgement',
  ),
  fault('stats/judgedBy.ts', 'fewestRoundsJudged = 8', 'fewestRoundsJudged = 9', 'findings/pairedRounds'),
  fault(
    'prose/leaders.ts',
    "own.every((status) => status === 'clear') && own.length === first.length",
    "own.every((status) => status === 'clear')",
    'findings/answers',
    'findings/groups',
  ),
  fault(
    'prose/answers.ts',
    'group.length === ids.length - 1',
    'group.length >= 2',
    'prose/english/blocks',
    'findings/answers',
  ),
  fault(
    'prose/pairAnswer.ts',
    'because: pair.openBecause,',
    'because: null,',
    'prose/sentences',
    'findings/answers',
  ),
];

const asked = process.argv.slice(2);
const tried = faults.filter(({ file }) => asked.length === 0 || asked.some((part) => file.includes(part)));
let found = 0;
for (const { file, from, to, guards } of tried) {
  const whole = readFileSync(file, 'utf8');
  const said = `${file}: ${from.split('\n')[0] ?? ''}`;
  if (!whole.includes(from)) {
    console.log(`not there  ${said}`);
    continue;
  }
  writeFileSync(
    file,
    whole.replace(from, () => to),
  );
  const { status } = spawnSync('npx', ['vitest', 'run', '--project', 'unit', '--bail', '1', ...guards], {
    stdio: 'ignore',
    env: { ...process.env, TZ: 'UTC' },
  });
  writeFileSync(file, whole);
  if (status !== 0) found += 1;
  console.log(`${status === 0 ? 'SURVIVED ' : 'found     '} ${said}`);
}
console.log(`${found} of ${tried.length} found`);
