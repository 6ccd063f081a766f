import type { ContenderLanding } from '../findings/findings.ts';
import {
  footWords,
  landingTableWords,
  landingWords,
  noPlaceColumns,
  placeWords,
  straighterFinding,
} from '../prose/english/charts/landing.ts';
import { leftOutWord } from '../prose/english/charts/shots.ts';
import { formatNumber, formatStep, type PrintStep } from '../prose/numbers.ts';
import { printingOf } from '../prose/printSteps.ts';
import { toReader } from '../prose/readerUnits.ts';
import { straighterOf } from '../prose/straighter.ts';
import type { Telling } from '../prose/telling.ts';
import { sentence } from '../prose/words.ts';
import type { Shown } from './chart.ts';
import { contenderName } from './contenderName.ts';
import { drawnShots, drawnWords } from './drawnShots.ts';
import { drawLanding } from './landingDrawing.ts';
import type { LandingPanel } from './landings.ts';
import { absentChart, type MadeChart } from './madeChart.ts';

/** *Where they landed*: carry and side of every shot, a panel a contender. */
export function makeLanding({ session, telling }: Shown): MadeChart {
  const { landing, metrics, design } = telling.findings;
  const about = { of: 'report' } as const;
  const carry = metrics.find(({ id }) => id === 'carry');
  if (landing === null || carry === undefined) return absentChart({ about }, noPlaceColumns);
  const { averageStep } = printingOf(carry, telling);
  const lane = formatNumber(read(landing.laneM, telling), 0);
  const panels = landing.byContender.map((own) => panel(own, lane, averageStep, { session, telling }));
  const words = landingWords(landing, lane, telling);
  return drawLanding({
    about,
    ...words,
    finding: straighterFinding(straighterOf(telling.findings), telling),
    found: [...words.found, ...drawnWords(session)],
    description: panels
      .map(({ contender, numbers, feet }) =>
        sentence(`${contender.label}: ${numbers}; ${feet.left}, ${feet.within}, ${feet.right}`),
      )
      .join(' '),
    table: {
      ...landingTableWords(lane, telling),
      rows: landing.byContender.map((own) => tableRow(own, averageStep, design.hitters === 1, telling)),
    },
    panels,
    within: read(landing.laneM, telling),
    leftOut: leftOutWord,
    recorded: drawnShots(session).length,
  });
}

function read(value: number, { system }: Telling): number {
  return toReader(value, 'carry', system);
}

function panel(
  own: ContenderLanding,
  lane: string,
  step: PrintStep,
  { session, telling }: Pick<Shown, 'session' | 'telling'>,
): LandingPanel {
  const { meanCarry, meanSide, nextShot: curve } = own;
  const average =
    meanCarry === null || meanSide === null
      ? null
      : { carry: read(meanCarry, telling), side: read(meanSide, telling) };
  const side = average === null ? '' : formatStep(Math.abs(average.side), step);
  return {
    contender: contenderName(own.id, telling),
    shots: drawnShots(session).flatMap((shot) => {
      const { carry, side: across } = shot.values;
      return shot.contender === own.id && typeof carry === 'number' && typeof across === 'number'
        ? [{ carry: read(carry, telling), side: read(across, telling), leftOut: shot.excluded !== null }]
        : [];
    }),
    numbers: placeWords(
      average === null
        ? null
        : {
            carry: formatStep(average.carry, step),
            side,
            towards: Number(side) === 0 ? 'line' : average.side > 0 ? 'right' : 'left',
          },
      telling,
    ),
    average,
    curve:
      curve === null
        ? null
        : {
            centre: [read(curve.centre[0], telling), read(curve.centre[1], telling)],
            halfAxes: [read(curve.halfAxes[0], telling), read(curve.halfAxes[1], telling)],
            angle: curve.angle,
          },
    feet: footWords(own, lane, telling),
  };
}

function tableRow(
  { id, n, meanCarry, meanSide, left, right, within, withinShare }: ContenderLanding,
  step: PrintStep,
  oneGolfer: boolean,
  telling: Telling,
): readonly string[] {
  const place = (value: number | null): string =>
    value === null ? '–' : formatStep(read(value, telling), step);
  const shares =
    withinShare === null ? ['–', '–'] : withinShare.map((share) => `${Math.round(100 * share)}%`);
  return [
    telling.nameOf(id),
    String(n),
    place(meanCarry),
    place(meanSide),
    String(left),
    String(right),
    String(within),
    ...(oneGolfer ? shares : []),
  ];
}
