import type { LaunchWindow } from '../findings/findings.ts';
import { plateauDepth } from '../flight/launchSpinGrid.ts';
import { clubTexts } from '../intake/authored/clubTexts.ts';
import {
  launchFinding,
  launchQuestion,
  launchWords,
  noLaunchColumns,
  noSharedBest,
  notForDistance,
  outOfWindow,
  type PrintedLaunch,
} from '../prose/english/charts/launch.ts';
import { leftOutWord } from '../prose/english/charts/shots.ts';
import { formatNumber } from '../prose/numbers.ts';
import { printAverage, printingOf } from '../prose/printSteps.ts';
import { toReader, unitFor, withUnit } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { hitsForDistance } from '../trade/clubKind.ts';
import type { MetricId } from '../trade/metrics.ts';
import type { Shown } from './chart.ts';
import { contenderName } from './contenderName.ts';
import { drawnShots, drawnWords } from './drawnShots.ts';
import { drawLaunch, shortfall } from './launchDrawing.ts';
import { absentChart, type MadeChart } from './madeChart.ts';

/** *Launch and spin at this ball speed*: the modelled plateau of carry with the shots on it. */
export function makeLaunch({ session, front, telling }: Shown): MadeChart {
  const window = telling.findings.launchWindow;
  const about = { of: 'report' } as const;
  if (window === null) return absentChart({ about }, noLaunchColumns);
  if (!hitsForDistance(clubTexts(front))) return absentChart({ about }, notForDistance);
  const speed = withUnit(
    formatNumber(toReader(window.ballSpeed, 'ball_speed', telling.system), 0),
    unitFor('ball_speed', telling.system),
  );
  const read = (metres: number): number => toReader(metres, 'carry', telling.system);
  const within = read(plateauDepth);
  const depth = withUnit(formatNumber(within, within >= 2.95 ? 0 : 1), unitFor('carry', telling.system));
  if (!window.short.some((row) => row.some((value) => value <= plateauDepth)))
    return absentChart({ about, question: launchQuestion(speed) }, noSharedBest(window.sets, speed));
  const words = launchWords(
    { speed, depth, sets: window.sets, runsOn: runsOn(window), averages: averagesOf(telling) },
    telling,
  );
  const [firstLaunch = 0] = window.launchAngles;
  const [firstSpin = 0] = window.spinRates;
  const launch = [firstLaunch, window.launchAngles.at(-1) ?? firstLaunch] as const;
  const spin = [firstSpin, window.spinRates.at(-1) ?? firstSpin] as const;
  const grid = { launch, spin, short: window.short.map((row) => row.map(read)) };
  const shots = drawnShots(session).flatMap(({ contender, values, excluded }) => {
    const { launch_angle: own, spin_rate: rate } = values;
    return typeof own === 'number' && typeof rate === 'number'
      ? [
          {
            launch: own,
            spin: rate,
            contender: contenderName(contender, telling).index,
            leftOut: excluded !== null,
          },
        ]
      : [];
  });
  const counted = shots.filter(({ leftOut }) => !leftOut);
  const inside = counted.filter((shot) => shortfall(grid, shot) <= within);
  // Where every shot lies outside, the outline says nothing of what was tested.
  if (inside.length === 0) return absentChart({ about, question: launchQuestion(speed) }, outOfWindow);
  return drawLaunch({
    about,
    ...words,
    found: [...words.found, ...drawnWords(session)],
    contenders: telling.findings.contenders.map(({ id }) => contenderName(id, telling)),
    finding: launchFinding(inside.length, counted.length),
    shots,
    grid,
    within,
    leftOut: leftOutWord,
    recorded: drawnShots(session).length,
  });
}

/** Whether the plateau reaches the edge of what was calculated. */
function runsOn({ short }: LaunchWindow): boolean {
  return short.some((row, at) =>
    (at === 0 || at === short.length - 1 ? row : [row[0], row.at(-1)]).some(
      (value) => value !== undefined && value <= plateauDepth,
    ),
  );
}

/** Averages of launch and spin as they are printed everywhere. */
function averagesOf(telling: Telling): readonly PrintedLaunch[] {
  const print = (metric: MetricId, contender: string): string => {
    const found = telling.findings.metrics.find(({ id }) => id === metric);
    const mean = found?.byContender.find(({ id }) => id === contender)?.mean ?? null;
    return found === undefined || mean === null ? '–' : printAverage(mean, printingOf(found, telling));
  };
  return telling.findings.contenders.map(({ id }) => ({
    name: telling.nameOf(id),
    launch: print('launch_angle', id),
    spin: print('spin_rate', id),
  }));
}
