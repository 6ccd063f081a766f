import type { ClaimDirection } from '../intake/authored/claims.ts';
import type { Problem } from '../problems/problem.ts';
import { shortUnit, unitFor } from '../prose/readerUnits.ts';
import { metrics } from '../trade/metrics.ts';
import type { AnswerField, Choice } from './answerFields.ts';
import { carriedClaim, carriedTyped, claimButtons } from './claimForms.ts';
import type { ClaimGround } from './claimGround.ts';
import { control, controlId } from './control.ts';
import { html, type Markup } from './markup.ts';
import { problemText } from './problemText.ts';
import { fittingFor, fittingSentence, mayBeUnproven, readClaim } from './readClaim.ts';
import type { ShownPart } from './reportPart.ts';
import {
  claimAnswer,
  claimQuestions,
  missingAnswers,
  questionOf,
  typedClaim,
  type ClaimQuestion,
  type TypedClaim,
} from './typedClaim.ts';
import { weighedClaim, type WeighedClaim } from './weighedClaim.ts';

/** A claim in the person's own words: what it says, and how it reads. */
export function ownClaim(shown: ShownPart, ground: ClaimGround): Markup {
  const { action, hidden, report } = shown;
  const typed = shown.typed === null ? null : typedClaim(shown.typed);
  const answer = typed === null ? null : claimAnswer(typed);
  const weighed = answer === null ? null : weighedClaim(answer, ground);
  const problems = [
    ...(typed === null ? [] : missingAnswers(typed, report.file)),
    ...(weighed === null ? [] : weighed.problems),
  ];
  const fields = claimFields(ground, typed);
  return html`<section aria-labelledby="own">
    <h2 id="own">A claim of your own</h2>
    ${problemList(fields, problems)} ${typed === null ? '' : reading(shown, ground, typed, weighed)}
    <form method="post" action="${action}" class="own-claim">
      ${hidden}
      ${fields.map((field) =>
        control(field, {
          typed: field.typed,
          inFile: null,
          problems: problems.filter((problem) => questionOf(problem) === field.name),
          suggested: [],
          standing: null,
        }),
      )}
      <p class="actions">
        <button type="submit" name="do" value="see">See how it reads</button>
        <button type="submit" name="do" value="add">Add this claim</button>
      </p>
    </form>
  </section>`;
}

/** How a claim that was typed would stand, and what can be taken in its place. */
function reading(
  shown: ShownPart,
  { telling }: ClaimGround,
  typed: TypedClaim,
  weighed: WeighedClaim | null,
): Markup {
  if (weighed?.kind !== 'judged') return html``;
  const fitting = fittingFor(weighed);
  return html`<div class="notice reading">
    <h3>How it reads</h3>
    ${readClaim(weighed, telling, 'own-said')}
    ${
      fitting === null
        ? ''
        : html`${fittingSentence(fitting, 'own-fits')}
          ${claimButtons(shown, 'own-fits', carriedClaim(fitting.claim), [
            { ask: 'add', words: 'Take this sentence' },
          ])}`
    }
    ${
      mayBeUnproven(weighed)
        ? claimButtons(shown, 'own-said', carriedTyped(typed), [
            { ask: 'add-unproven', words: 'Add it, printed as not shown by the shots' },
          ])
        : ''
    }
  </div>`;
}

function problemList(fields: readonly AnswerField[], problems: readonly Problem[]): Markup {
  if (problems.length === 0) return html``;
  return html`<ul class="problems">
    ${fields.map((field) =>
      problems
        .filter((problem) => questionOf(problem) === field.name)
        .map(
          (problem) =>
            html`<li><a href="#${controlId(field)}">${field.label}</a>: ${problemText(problem)}</li>`,
        ),
    )}
  </ul>`;
}

/** The ways in which two can differ, in words for anybody. */
const directionWords: Readonly<Record<ClaimDirection, string>> = {
  more: 'more of it: farther, faster, higher',
  less: 'less of it: less far, slower, lower',
  tighter: 'more alike from shot to shot',
  straighter: 'nearer the target line',
};

function claimFields({ telling }: ClaimGround, typed: TypedClaim | null): readonly AnswerField[] {
  const { findings, system, nameOf } = telling;
  const contenders = findings.contenders.map(({ id }) => ({ value: id, words: nameOf(id) }));
  const measured = findings.metrics.map(({ id }) => ({ value: id, words: metrics[id].name }));
  const [main] = findings.metrics;
  const unit = main === undefined ? '' : shortUnit(unitFor(main.id, system));
  const directions = (['more', 'less', 'tighter', 'straighter'] as const)
    .filter((direction) => direction !== 'straighter' || findings.straighter !== null)
    .map((direction) => ({ value: direction, words: directionWords[direction] }));
  const asked: Readonly<
    Record<
      ClaimQuestion,
      { readonly label: string; readonly help: string | null; choices: readonly Choice[] }
    >
  > = {
    say: {
      label: 'What you say, in one sentence',
      help: 'it stands in your report as you write it',
      choices: [],
    },
    metric: { label: 'What it is about', help: null, choices: measured },
    of: { label: 'Of which one you say it', help: null, choices: contenders },
    direction: { label: 'What you say of it', help: null, choices: directions },
    than: { label: 'Compared with which one', help: null, choices: contenders },
    size: {
      label: 'By at least how much, where your sentence says so',
      help: `a number with its unit, such as 5${unit === '' ? '' : ` ${unit}`}`,
      choices: [],
    },
  };
  return claimQuestions.map((name) => {
    const { label, help, choices } = asked[name];
    const text = typed?.[name] ?? '';
    return {
      path: [name],
      name,
      label,
      help,
      control: choices.length === 0 ? 'text' : 'one-of',
      choices,
      usual: null,
      required: true,
      typed: text === '' ? [] : [text],
    };
  });
}
