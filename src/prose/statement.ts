import type { Interval, MetricFindings, NotJudged, OpenCause, StatusId } from '../findings/findings.ts';
import type { VerdictId } from '../findings/verdict.ts';
import type { MetricId } from '../trade/metrics.ts';

/** What a statement is about: one pair in one metric, one metric of the whole report, or the report itself. */
export type About =
  | { readonly of: 'pair'; readonly metric: MetricId; readonly a: string; readonly b: string }
  | { readonly of: 'metric'; readonly metric: MetricId }
  | { readonly of: 'report' };

/** A difference counted towards whoever is named first, SI. */
export interface Difference {
  readonly estimate: number;
  readonly ci: Interval;
}

/** The answer about one pair in one metric, as judged; `ahead` and `behind` are ids. */
export interface PairAnswer {
  readonly kind: 'pair-answer';
  readonly about: Extract<About, { readonly of: 'pair' }>;
  readonly status: StatusId;
  readonly ahead: string;
  readonly behind: string;
  /** Whether the one ahead has more of the metric or less of it. */
  readonly by: 'more' | 'less';
  /** Counted towards `ahead` in the direction of `by`; null where the pair was not judged. */
  readonly difference: Difference | null;
  /** SI. */
  readonly matters: number;
  readonly firstLook: boolean;
  /** No difference was seen, or none that matters: what an unsure answer would be about. */
  readonly alike: boolean;
  /** Both limits lie so near what matters that the two are as good as within it of each other. */
  readonly withinMatters: boolean;
  /** Sure shot by shot, but not once each spell of shots is counted as one. */
  readonly spellsAlike: boolean;
  readonly because: OpenCause | null;
  readonly hitLater: string | null;
  /** Where the two were hit one after another: the place of either, from 0, and how many there were. */
  readonly places: { readonly ahead: number; readonly behind: number; readonly of: number } | null;
  /** Of the checks, how many do not confirm the answer. */
  readonly unconfirmed: { readonly by: number; readonly of: number } | null;
  readonly notJudged: NotJudged | null;
}

/** Answers about at least one pair. */
export type SomePairs = readonly [PairAnswer, ...PairAnswer[]];

/** Several pairs that say the same of one subject, told in one sentence. */
export type AnswerStatement =
  | { readonly kind: 'one'; readonly answer: PairAnswer }
  | {
      /** One is ahead of several, or several of one. */
      readonly kind: 'ahead-of';
      readonly about: About;
      readonly shared: 'ahead' | 'behind';
      readonly answers: SomePairs;
      /** Whether those named are all the others of the report. */
      readonly all: boolean;
    }
  | {
      /** No one of these can be told from another, or all are alike. */
      readonly kind: 'together';
      readonly about: About;
      readonly of: 'cannot-tell' | 'level';
      readonly ids: readonly string[];
      readonly matters: number;
      /** The farthest that any two may be apart, SI; null where a pair has no interval. */
      readonly most: number | null;
    }
  | {
      /** One that cannot be told from any of several. */
      readonly kind: 'cannot-place';
      readonly about: About;
      readonly id: string;
      readonly others: readonly string[];
      readonly all: boolean;
      readonly withinMatters: boolean;
      readonly matters: number;
    }
  | {
      /** Differences seen, or none, whose cause the order leaves open. */
      readonly kind: 'open';
      readonly about: About;
      readonly seen: boolean;
      readonly answers: SomePairs;
    }
  | {
      /** Who leads among four or more. */
      readonly kind: 'leaders';
      readonly about: About;
      readonly by: 'more' | 'less';
      readonly leaders: readonly string[];
      /** Who cannot be told from any of the others. */
      readonly unplaced: readonly string[];
      /** Who is behind some, but cannot be told from the one with the best average. */
      readonly close: { readonly ids: readonly string[]; readonly best: string } | null;
      readonly firstLook: boolean;
    }
  | {
      /** Who is behind the leaders, and how surely. */
      readonly kind: 'behind';
      readonly about: About;
      readonly by: 'more' | 'less';
      readonly ids: readonly string[];
      readonly how: 'clear' | 'size-uncertain' | 'small';
    }
  | {
      /** Pairs for which there is no room here. */
      readonly kind: 'more';
      readonly about: About;
      readonly count: number;
    };

export type StatementOf<Kind extends AnswerStatement['kind']> = Extract<
  AnswerStatement,
  { readonly kind: Kind }
>;

/** Whose calculation an answer rests on, where that has to be said in the same breath. */
export type CalculatedBy = 'monitor' | 'flight-model' | null;

/** What is known of readings that the monitor did not see. */
export type CalculatedHow = 'flight-model' | 'calculated' | 'estimated' | 'looks-estimated';

/** The whole answer of one main measure. */
export interface AnswerBlock {
  readonly kind: 'answer';
  readonly about: Extract<About, { readonly of: 'metric' }>;
  readonly calculatedBy: CalculatedBy;
  readonly statements: readonly AnswerStatement[];
}

/** What a caution is about and how large its effect could be, SI. */
export type CautionFacts =
  | {
      readonly overlay:
        'one-after-another' | 'order-unknown' | 'order-drift' | 'order-lever' | 'order-few-visits';
      /** The least steady drift from first to last shot that alone would make one of these differences. */
      readonly drift: number | null;
    }
  | { readonly overlay: 'depends-on-left-out'; readonly leftOut: number; readonly whole: VerdictId | null }
  | {
      readonly overlay: 'mixed-with-swing';
      readonly measures: readonly {
        readonly id: MetricId;
        readonly worth: Interval;
        readonly in: MetricId;
      }[];
    }
  /** Those of which more readings are missing. */
  | { readonly overlay: 'uneven-readings'; readonly of: readonly string[] }
  | {
      readonly overlay: 'matters-unusual';
      readonly matters: number;
      readonly from: MetricFindings['mattersFrom'];
      /** Whether a record shows it before the session. */
      readonly onRecord: boolean;
    }
  | { readonly overlay: 'near-device'; readonly accuracy: number | null }
  | { readonly overlay: 'modelled-reading'; readonly by: CalculatedHow }
  | { readonly overlay: 'few-shots'; readonly detectable: number | null }
  | {
      readonly overlay: 'visits-alike' | 'leans' | 'rests-on-one-shot' | 'golfers-apart';
    };

export type CautionFactsOf<Overlay extends CautionFacts['overlay']> = Extract<
  CautionFacts,
  { readonly overlay: Overlay }
>;

/** Something to keep in mind about answers in one metric, with the pairs that it bears on. */
export interface Caution {
  readonly kind: 'caution';
  readonly about: Extract<About, { readonly of: 'metric' }>;
  readonly facts: CautionFacts;
  readonly pairs: readonly PairAnswer[];
}
