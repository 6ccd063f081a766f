import { answerOf, primaryMetrics } from '../prose/answers.ts';
import { cautionsFor, gravestBeside } from '../prose/cautions.ts';
import { dateInWords } from '../prose/date.ts';
import { headOf } from '../prose/english/answerHead.ts';
import { toldInBrief } from '../prose/english/answersInBrief.ts';
import { toldCounted } from '../prose/english/countedAnswers.ts';
import type { BriefForm } from '../prose/english/statementInBrief.ts';
import { sayCaution } from '../prose/english/cautions.ts';
import { findingInRow } from '../prose/english/findingInRow.ts';
import {
  sayCautionOfPairs,
  sayDayHit,
  sayDrawnPair,
  sayWhereAndVersion,
} from '../prose/english/kit/cardWords.ts';
import { changesWords, stampWords, withdrawnWords } from '../prose/english/kit/standing.ts';
import { golfersShotsAndDay } from '../prose/english/kit/whoAndHow.ts';
import { sayWhoHit } from '../prose/english/whoHit.ts';
import { pairAnswers } from '../prose/pairAnswer.ts';
import type { About, Caution } from '../prose/statement.ts';
import { whoHit } from '../prose/whoHit.ts';
import { sentence } from '../prose/words.ts';
import { absoluteAddress, spokenAddress } from './absoluteAddress.ts';
import type { CardPlan } from './cardPlan.ts';
import { answerOfFigure } from './figureAnswer.ts';
import { figureInterest } from './figureInterest.ts';
import { publisherOf } from './interestInShort.ts';
import type { Report } from './report.ts';
import { reportVersion } from './reportVersion.ts';
import { textOf } from './said.ts';
import { countsIn } from './whoAndHow.ts';

/** What a card of a report says, each in whole sentences but for the head. */
export interface CardWords {
  /** "Invented data."; empty for most. */
  readonly stamp: string;
  /** "Corrected 2 April 2026."; empty for most. */
  readonly changes: string;
  /** "Example Golf Workshop." */
  readonly publisher: string;
  /** "Carry of balls, one golfer": what was measured and compared, and by how many it was hit. */
  readonly head: string;
  /** The whole answer in its forms, from the one that tells most to the shortest. */
  readonly findings: readonly string[];
  /** Of each pair that was judged, the surest first: "Heron over Wren: about 12 yards, likely 8 to 15." */
  readonly pairs: readonly string[];
  readonly caution: CardCaution | null;
  /** Who hit, and when. */
  readonly whom: Readonly<Record<CardPlan['whom'], string>>;
  readonly interest: { readonly whole: string; readonly fewWords: string };
  /** Address and version of the report. */
  readonly where: string;
}

/** What to keep in mind about the answer. */
interface CardCaution {
  readonly whole: string;
  readonly brief: string;
  /** Whether the answer would be another one without it. */
  readonly decides: boolean;
}

const decisive: readonly Caution['facts']['overlay'][] = ['depends-on-left-out', 'rests-on-one-shot'];

const forms: readonly BriefForm[] = ['sized', 'unsized', 'bare'];

/**
 * The words of a report's card: of its first main measure alone, as another one has a page of its own; of a report that
 * was taken back only that it was.
 */
export function cardWords(report: Report): CardWords {
  const { source, findings, telling } = report;
  const address = absoluteAddress(source.shop)?.(`/reports/${source.slug}/`) ?? null;
  const common = {
    stamp: stampWords(source.front),
    changes: changesWords(source),
    publisher: sentence(publisherOf(report)),
    where: sayWhereAndVersion(address === null ? null : spokenAddress(address), reportVersion(source)),
  };
  if (source.front.status === 'withdrawn') {
    const none = {
      pairs: [],
      caution: null,
      whom: { whole: '', brief: '', when: '' },
      interest: { whole: '', fewWords: '' },
    };
    return { ...common, ...none, head: source.front.title, findings: [withdrawnWords(source)] };
  }
  const [metric = null] = primaryMetrics(findings);
  const answers = metric === null ? [] : pairAnswers(metric, findings.design);
  const day = dateInWords(source.front.date, source.locale);
  const whom = {
    whole: `${sayWhoHit(whoHit(source, findings), telling.system)[0] ?? ''} ${sayDayHit(day)}`.trim(),
    brief: golfersShotsAndDay(telling, countsIn(report, metric), day),
    when: sayDayHit(day),
  };
  // The card stands for the first picture, and says of the interest what that does.
  const lead = report.figures.find(({ kind }) => kind === 'drawn')?.id ?? 'apart';
  const about: About = metric === null ? { of: 'report' } : { of: 'metric', metric: metric.id };
  const { whole, inFewWords } = figureInterest(
    report,
    { id: lead },
    answerOfFigure(report, { about, chart: 'apart' }),
  );
  const told = { ...common, whom, interest: { whole: textOf(whole), fewWords: textOf(inFewWords) } };
  if (metric === null)
    return { ...told, head: '', findings: [findingInRow(telling)], pairs: [], caution: null };
  const block = answerOf(metric, findings);
  const judged = answers.filter(({ difference }) => difference !== null);
  return {
    ...told,
    head: headOf(block, telling),
    findings: [
      findingInRow(telling),
      ...forms.map((form) => sentence(toldInBrief(block, telling, form))),
      sentence(toldCounted(answers)),
    ],
    pairs: judged.map((one) => sayDrawnPair(one, telling)),
    caution: cautionOf(gravestBeside(cautionsFor(metric, findings)), judged.length, report),
  };
}

function cautionOf(caution: Caution | null, judged: number, { telling }: Report): CardCaution | null {
  return (
    caution && {
      whole: sayCaution(caution, telling),
      brief: sayCautionOfPairs(caution, judged, telling),
      decides: decisive.includes(caution.facts.overlay),
    }
  );
}

/** The finding that tells most in at most so many words; the shortest where all have more. */
export function findingWithin({ findings }: Pick<CardWords, 'findings'>, words: number): string {
  return findings.find((told) => told.split(' ').length <= words) ?? findings.at(-1) ?? '';
}
