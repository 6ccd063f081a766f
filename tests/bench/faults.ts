/**
 * Puts one fault after another into the code by hand's reach (a condition turned, two numbers exchanged, a caution of one
 * pair told of another), runs tests, and says which faults no test found. Run by hand in a clone, since it edits `src/`:
 *
 *   node tests/bench/faults.ts tests/prose tests/kit
 */
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';

interface Fault {
  readonly file: string;
  readonly from: string;
  readonly to: string;
}

const fault = (file: string, from: string, to: string): Fault => ({ file: `src/${file}`, from, to });

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
  fault('prose/cautions.ts', "verdict !== 'not-judged' && overlays", 'overlays'),
  fault('prose/cautions.ts', 'if (own.metric !== about.metric) return false;', ''),
  fault('prose/cautions.ts', 'ids.includes(id) ? excluded : 0', 'excluded'),
  fault('prose/cautions.ts', 'Math.min(...drifts)', 'Math.max(...drifts)'),
  fault('prose/english/answers.ts', 'hitLater === ahead ?', 'hitLater !== ahead ?'),
  fault(
    'prose/english/answers.ts',
    'placeInRow(places.ahead, places.of)',
    'placeInRow(places.behind, places.of)',
  ),
  fault(
    'prose/english/answers.ts',
    'likely ${oneSidedRange(difference, printing, false)}`',
    'likely ${estimateWords(difference, printing)}`',
  ),
  fault('prose/english/answers.ts', "level: 'No difference that matters'", "level: 'Too little to matter'"),
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
  fault('prose/sure.ts', 'answer.ahead === first.answer.ahead', 'answer.behind === first.answer.behind'),
  fault('prose/reach.ts', 'detectable <= matters', 'detectable >= matters'),
  fault(
    'prose/english/toldAnswer.ts',
    'cautionsFor(metric, findings)',
    'cautionsFor(findings.metrics[0] ?? metric, findings)',
  ),
  fault('prose/english/toldAnswer.ts', "first.alone.join(' ')", "(first.alone[0] ?? '')"),
  fault('findings/withinMatters.ts', '<= nearlyMatters * matters', '<= matters'),
  fault(
    'kit/shotColumns.ts',
    '+ 1;\n  return String(Number(value.toFixed(decimals)));',
    ';\n  return String(Number(value.toFixed(decimals)));',
  ),
];

const tests = process.argv.slice(2);
let found = 0;
for (const { file, from, to } of faults) {
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
  const { status } = spawnSync('npx', ['vitest', 'run', '--project', 'unit', '--bail', '1', ...tests], {
    stdio: 'ignore',
    env: { ...process.env, TZ: 'UTC' },
  });
  writeFileSync(file, whole);
  if (status !== 0) found += 1;
  console.log(`${status === 0 ? 'SURVIVED ' : 'found     '} ${said}`);
}
console.log(`${found} of ${faults.length} found`);
