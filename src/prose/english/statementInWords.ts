import { metrics } from '../../trade/metrics.ts';
import { printLimits, type Printing } from '../printSteps.ts';
import type { AnswerStatement, PairAnswer, StatementOf } from '../statement.ts';
import { printingFor, type Telling } from '../telling.ts';
import { counted, countWord } from '../words.ts';
import { tooLittle } from './answerWords.ts';
import { comparisonOf } from './comparisons.ts';
import { namesOf } from './names.ts';
import { openClause, type Place } from './openCause.ts';
import { sayClause } from './pairInWords.ts';
import { byRange, limitWithUnit, mattersWords } from './ranges.ts';

/** One statement of an answer in running text, without its full stop. */
export function sayStatement(statement: AnswerStatement, telling: Telling, place: Place = 'page'): string {
  switch (statement.kind) {
    case 'one':
      return sayClause(statement.answer, telling, place);
    case 'ahead-of':
      return aheadOf(statement, telling);
    case 'together':
      return togetherClause(statement, telling);
    case 'cannot-place':
      return cannotPlace(statement, telling);
    case 'open':
      return openClause(statement, telling, place);
    case 'leaders':
      return leadersClause(statement, telling);
    case 'behind':
      return behindClause(statement, telling);
    case 'more':
      return `${counted(statement.count, 'more pair')} ${statement.count === 1 ? 'stands' : 'stand'} in the report`;
  }
}

/** "Sorrel carried farther than both others, likely by 2 to 11 yards"; with a range each where they are not alike sure. */
function aheadOf({ shared, answers, all }: StatementOf<'ahead-of'>, telling: Telling): string {
  const [first] = answers;
  const printing = printingFor(first.about.metric, telling);
  const { verb, [first.by]: more } = comparisonOf(first.about.metric);
  const look = answers.some(({ firstLook }) => firstLook) ? 'on a first look ' : '';
  const small = first.status === 'small';
  const others =
    all && answers.length === 2
      ? 'both others'
      : namesOf(
          answers.map(({ behind }) => behind),
          telling,
        );
  const range = small ? `by ${tooLittle}` : `likely by ${widestRange(answers, printing)}`;
  if (shared === 'behind') {
    const leaders = namesOf(
      answers.map(({ ahead }) => ahead),
      telling,
    );
    return `${look}${leaders} ${answers.length === 2 ? 'both ' : ''}${verb} ${more} than ${telling.the(first.behind)}, ${range}`;
  }
  if (small || answers.every(({ status }) => status === first.status)) {
    return `${look}${telling.the(first.ahead)} ${verb} ${more} than ${others}, ${range}`;
  }
  const each = answers.map(({ behind, difference }) =>
    difference === null
      ? `than ${telling.the(behind)}`
      : `than ${telling.the(behind)}, likely by ${byRange(difference, printing)}`,
  );
  return `${look}${telling.the(first.ahead)} ${verb} ${more} ${each.join(', and ')}`;
}

function widestRange(answers: readonly PairAnswer[], printing: Printing): string {
  const told = answers.flatMap(({ difference }) => (difference === null ? [] : [difference]));
  const ci = [
    Math.min(...told.map(({ ci: [low] }) => low)),
    Math.max(...told.map(({ ci: [, high] }) => high)),
  ] as const;
  return byRange({ estimate: ci[0], ci }, printing);
}

function togetherClause({ of, ids, most, about }: StatementOf<'together'>, telling: Telling): string {
  if (about.of === 'report') return '';
  const printing = printingFor(about.metric, telling);
  const names = ids.length > 3 ? `the ${countWord(ids.length)} ${telling.nouns}` : namesOf(ids, telling);
  if (of === 'level') {
    return `${names} ${comparisonOf(about.metric).alike}: any difference between two of them is likely under ${mattersWords(printing)}`;
  }
  const apart =
    most === null
      ? ''
      : `: any two could be up to ${limitWithUnit(printLimits([0, most], printing).upper, printing)} apart`;
  return `we cannot tell ${names} apart in ${metrics[about.metric].name}${apart}`;
}

function cannotPlace(
  { id, others, all, withinMatters, about }: StatementOf<'cannot-place'>,
  telling: Telling,
): string {
  if (about.of === 'report') return '';
  const { verb, more, either: moreOrLess } = comparisonOf(about.metric);
  const those = all && others.length === 2 ? 'both others' : namesOf(others, telling);
  const either = all && others.length === 2 ? 'either' : namesOf(others, telling, 'or');
  return withinMatters
    ? `${telling.the(id)} was within about ${mattersWords(printingFor(about.metric, telling))} of ${those} in ${metrics[about.metric].name}; we cannot say which ${verb} ${more}`
    : `we cannot tell whether ${telling.the(id)} ${verb} ${moreOrLess} than ${either}`;
}

function leadersClause(
  { about, by, leaders, unplaced, close, firstLook }: StatementOf<'leaders'>,
  telling: Telling,
): string {
  if (about.of === 'report') return '';
  const { verb, verbs, most, least } = comparisonOf(about.metric);
  const ahead = `${firstLook ? 'on a first look ' : ''}${namesOf(leaders, telling)} ${leaders.length > 1 ? verbs : verb} ${by === 'less' ? least : most}`;
  const untold = [
    ...(leaders.length > 1 ? ['them apart'] : []),
    ...(close === null ? [] : [`${namesOf(close.ids, telling, 'or')} from ${telling.the(close.best)}`]),
    ...(unplaced.length === 0 ? [] : [`${namesOf(unplaced, telling, 'or')} from any other`]),
  ];
  return untold.length === 0 ? ahead : `${ahead}; we cannot tell ${untold.join(', nor ')}`;
}

function behindClause({ about, by, ids, how }: StatementOf<'behind'>, telling: Telling): string {
  if (about.of === 'report') return '';
  const { verb, verbs, more, less } = comparisonOf(about.metric);
  const word = by === 'less' ? more : less;
  const did = `${namesOf(ids, telling)} ${ids.length > 1 ? verbs : verb}`;
  if (how === 'clear') return `${did} clearly ${word}`;
  return how === 'small' ? `${did} ${word}, by ${tooLittle}` : `${did} ${word}, by how much is uncertain`;
}
