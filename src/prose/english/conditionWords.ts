import type { Front } from '../../intake/authored/front.ts';
import type { ballQuestions } from '../../intake/authored/ball.ts';
import type { singleConditions } from '../../intake/authored/conditions.ts';
import type { monitorQuestions } from '../../intake/authored/monitor.ts';
import type { Session } from '../../intake/session.ts';
import { readingsInWords } from './readingsInWords.ts';

/**
 * What pages print of an answer: its line in the list of all conditions, where what nobody answered is "not recorded",
 * and its part of the sentence in brief. Null: not in brief.
 */
export interface ConditionWords {
  readonly heading: string;
  readonly listed: string | null | undefined;
  readonly inBrief: string | null | undefined;
}

/** Null: the words stand in another line. */
type WordsOf<Key extends PropertyKey> = Readonly<Record<Key, ConditionWords | null>>;

/** In the order in which they stand in brief; the list has that of the questions. */
export function placeWords({ conditions }: Front): WordsOf<keyof typeof singleConditions> {
  const { place, surface, tee, temperature, wind, altitude, target, humidity } = conditions;
  return {
    place: { heading: 'Place', listed: place, inBrief: place },
    surface: { heading: 'Surface', listed: surface, inBrief: surface },
    tee: { heading: 'Tee', listed: tee, inBrief: after('tee', tee) },
    temperature: { heading: 'Temperature', listed: temperature, inBrief: temperature },
    wind: { heading: 'Wind', listed: wind, inBrief: after('wind', wind) },
    altitude: { heading: 'Altitude', listed: altitude, inBrief: after('altitude', altitude) },
    target: { heading: 'Target', listed: target, inBrief: after('target', target) },
    humidity: { heading: 'Humidity', listed: humidity, inBrief: null },
  };
}

/** The same of the ball, which may also stand among what was held for all. */
export function ballWords({ conditions, held }: Front): WordsOf<keyof typeof ballQuestions> {
  const { model, description, state, sameForAll } = conditions.ball ?? {};
  const whole = description ?? held.ball;
  const hit = model ?? whole ?? held.ball_model;
  const was = state ?? held.ball_state;
  const alike = sameForAll ?? (held.ball === undefined ? undefined : true);
  const yesOrNo = alike === undefined ? null : alike ? 'yes' : 'no';
  return {
    model: { heading: 'Ball', listed: hit, inBrief: hit },
    state: { heading: 'New, used or range', listed: was ?? stateIn(whole), inBrief: was },
    same_for_all: {
      heading: 'Same ball for all',
      listed: yesOrNo,
      inBrief: sameForAll === undefined ? null : sameForAll ? 'the same for all' : 'not the same for all',
    },
    // Stands in place of the model.
    description: null,
  };
}

function stateIn(words: string | undefined): string | null {
  return /\b(new|used|range)\b/i.exec(words ?? '')?.[0]?.toLowerCase() ?? null;
}

/** The same of the monitor. */
export function monitorWords(front: Front, session: Session): WordsOf<keyof typeof monitorQuestions> {
  const { kind, flight, normalisedTo, lastCheck, statedAccuracy, accuracyStatedBy, software } =
    front.conditions.monitor ?? {};
  const inWords = statedAccuracy?.words ?? undefined;
  return {
    kind: { heading: 'Kind', listed: kind, inBrief: kind },
    flight: { heading: 'Flight seen', listed: flight, inBrief: after('flight seen:', flight) },
    normalised_to: {
      heading: 'Distances corrected to',
      listed: normalisedTo,
      inBrief: after('distances corrected to', normalisedTo),
    },
    last_check: { heading: 'Last checked', listed: lastCheck, inBrief: after('last checked', lastCheck) },
    stated_accuracy: {
      heading: 'Accuracy as stated',
      listed: inWords ?? accuraciesInWords(statedAccuracy?.byMetric),
      inBrief: after('accuracy as stated:', inWords),
    },
    accuracy_stated_by: { heading: 'Who states it', listed: accuracyStatedBy, inBrief: null },
    columns: { heading: 'Measured or calculated', listed: readingsInWords(front, session), inBrief: null },
    software: { heading: 'Software', listed: software, inBrief: null },
  };
}

const after = (label: string, answer: string | undefined): string | undefined =>
  answer === undefined ? undefined : `${label} ${answer}`;

type Accuracies = NonNullable<NonNullable<Front['conditions']['monitor']>['statedAccuracy']>['byMetric'];

const accuraciesInWords = (accuracies: Accuracies | undefined): string | null =>
  accuracies === undefined
    ? null
    : Object.entries(accuracies)
        .map(([metric, { typed }]) => `${metric.replace(/_/g, ' ')} ±${typed.replace(/^±\s*/, '')}`)
        .join(', ');
