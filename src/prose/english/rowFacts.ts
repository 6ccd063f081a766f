import type { Findings } from '../../findings/findings.ts';
import type { Source } from '../../intake/authored/source.ts';
import { dateInWords } from '../date.ts';
import { interestsOf, shortNames } from '../interestStatements.ts';
import { formatNumber } from '../numbers.ts';
import { shortUnit, toReader, unitFor, type UnitSystem } from '../readerUnits.ts';
import { whoHit } from '../whoHit.ts';
import { capitalised, counted, listed } from '../words.ts';
import { interestFlags } from './interestFlags.ts';
import { latestCorrection } from './kit/standing.ts';

/** What a row of a list says under a finding, in parts that stand between dots. */
export interface RowFacts {
  /** "One golfer". */
  readonly golfers: string;
  /** "83–85 mph"; null where club speed is not recorded. */
  readonly clubSpeed: string | null;
  /** "36 shots", "18 April 2026". */
  readonly shots: string;
  readonly day: string;
  /** What a reader must not miss: outside money, corrected, replied to. */
  readonly grave: readonly string[];
  readonly further: readonly string[];
}

/** The facts of a report for its row, in one system of units; `shots` are all that were hit. */
export function rowFacts(source: Source, findings: Findings, shots: number, system: UnitSystem): RowFacts {
  const { front, locale } = source;
  const { money, further } = interestFlags(interestsOf(front), shortNames(front.contenders));
  const corrected = latestCorrection(front);
  const repliers = [...new Set(front.replies.map(({ from }) => from))];
  return {
    golfers: capitalised(counted(findings.design.hitters, 'golfer')),
    clubSpeed: clubSpeedOf(source, findings, system),
    shots: counted(shots, 'shot'),
    day: dateInWords(front.date, locale),
    grave: [
      ...money,
      ...(corrected === null ? [] : [`corrected ${dateInWords(corrected, locale)}`]),
      ...(repliers.length === 0 ? [] : [`reply from ${listed(repliers)}`]),
    ],
    further: [
      ...further,
      ...(front.status === 'draft' ? ['draft, not published'] : []),
      ...(front.inventedData ? ['invented data'] : []),
    ],
  };
}

function clubSpeedOf(source: Source, findings: Findings, system: UnitSystem): string | null {
  const { clubSpeed } = whoHit(source, findings);
  if (clubSpeed === null) return null;
  const print = (speed: number): string => formatNumber(toReader(speed, 'club_speed', system), 0);
  const [low, high] = [print(clubSpeed.low), print(clubSpeed.high)];
  return `${low === high ? low : `${low}–${high}`} ${shortUnit(unitFor('club_speed', system))}`;
}
