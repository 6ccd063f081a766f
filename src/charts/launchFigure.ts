import type { Session } from '../intake/session.ts';
import { plateauDepth } from '../flight/launchSpinGrid.ts';
import { formatNumber } from '../prose/numbers.ts';
import { toReader, unitFor, withUnit } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { capitalised, countWord } from '../prose/words.ts';
import { contenderName } from './contenderName.ts';
import { drawnShots, drawnWords } from './drawnShots.ts';
import type { Figure, Table } from './figure.ts';
import { launchChart } from './launch.ts';

const id = 'launch-and-spin';

/** *Launch and spin at this ball speed*: the modelled plateau of carry with the shots on it. */
export function launchFigure(session: Session, telling: Telling): Figure {
  const window = telling.findings.launchWindow;
  if (window === null) {
    const question = 'Launch and spin at this ball speed';
    return {
      kind: 'absent',
      id,
      question,
      why: 'Not drawn: it takes one golfer and columns for ball speed, launch angle and spin.',
    };
  }
  const speed = withUnit(
    formatNumber(toReader(window.ballSpeed, 'ball_speed', telling.system), 0),
    unitFor('ball_speed', telling.system),
  );
  const question = `Launch and spin at ${speed} ball speed`;
  const read = (metres: number): number => toReader(metres, 'carry', telling.system);
  const within = read(plateauDepth);
  const depth = withUnit(formatNumber(within, within >= 2.95 ? 0 : 1), unitFor('carry', telling.system));
  const shared = window.short.some((row) => row.some((value) => value <= plateauDepth));
  if (!shared) {
    return {
      kind: 'absent',
      id,
      question,
      why: `Not drawn: the ${countWord(window.sets)} published sets of coefficients share no best launch and spin at ${speed}.`,
    };
  }
  const [firstLaunch = 0] = window.launchAngles;
  const [firstSpin = 0] = window.spinRates;
  const sets = `all ${countWord(window.sets)} sets of coefficients`;
  return launchChart({
    id,
    question,
    subject: `Launch angle and spin of every shot, with what a flight model makes of them`,
    finding: `Inside the line the model carries within ${depth} of its best by ${sets}. Calculated for ${speed} of ball speed, not measured; the model does not settle what spin is worth. Ball speed, direction and where a shot has to stop are not in the picture.${drawnWords(session)}`,
    description: `Modelled carry at ${speed} of ball speed. ${insideWords(session, telling)}`,
    table: table(session, telling),
    setting: `At ${speed} ball speed, calculated, ${sets}`,
    contenders: telling.findings.contenders.map(({ id: contender }) => contenderName(contender, telling)),
    shots: drawnShots(session).flatMap((shot) => {
      const { launch_angle: launch, spin_rate: spin } = shot.values;
      return typeof launch === 'number' && typeof spin === 'number'
        ? [
            {
              launch,
              spin,
              contender: contenderName(shot.contender, telling).index,
              leftOut: shot.excluded !== null,
            },
          ]
        : [];
    }),
    grid: {
      launch: [firstLaunch, window.launchAngles[window.launchAngles.length - 1] ?? firstLaunch],
      spin: [firstSpin, window.spinRates[window.spinRates.length - 1] ?? firstSpin],
      short: window.short.map((row) => row.map(read)),
    },
    within,
    plateauWords: `Inside the line: within ${depth} of the most this ball speed can carry${runsOn(window.short) ? '; dotted: it runs on beyond what was calculated' : ''}`,
    launchAxis: 'Launch angle in degrees',
    spinAxis: 'Spin in rpm',
    leftOut: 'left out',
    recorded: session.shots.length,
  });
}

/** Whether the plateau reaches the edge of what was calculated. */
function runsOn(short: readonly (readonly number[])[]): boolean {
  return short.some((row, at) =>
    (at === 0 || at === short.length - 1 ? row : [row[0], row.at(-1)]).some(
      (value) => value !== undefined && value <= plateauDepth,
    ),
  );
}

function means(
  session: Session,
  contender: string,
): { readonly launch: number; readonly spin: number } | null {
  const shots = session.shots.flatMap(({ contender: own, excluded, values }) => {
    const { launch_angle: launch, spin_rate: spin } = values;
    return own === contender && excluded === null && typeof launch === 'number' && typeof spin === 'number'
      ? [{ launch, spin }]
      : [];
  });
  if (shots.length === 0) return null;
  return {
    launch: shots.reduce((sum, { launch }) => sum + launch, 0) / shots.length,
    spin: shots.reduce((sum, { spin }) => sum + spin, 0) / shots.length,
  };
}

function rows(session: Session, telling: Telling): string[][] {
  return telling.findings.contenders.map(({ id: contender }) => {
    const mean = means(session, contender);
    return mean === null
      ? [telling.nameOf(contender), '–', '–']
      : [telling.nameOf(contender), formatNumber(mean.launch, 1), formatNumber(mean.spin, 0)];
  });
}

function insideWords(session: Session, telling: Telling): string {
  return rows(session, telling)
    .map(
      ([name = '', launch = '', spin = '']) =>
        `${capitalised(name)}: average launch ${launch} degrees, spin ${spin} rpm.`,
    )
    .join(' ');
}

function table(session: Session, telling: Telling): Table {
  return {
    caption: 'Average launch and spin',
    head: [capitalised(telling.noun), 'Launch angle (°)', 'Spin rate (rpm)'],
    rows: rows(session, telling),
  };
}
