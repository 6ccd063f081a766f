import type { Context } from 'hono';
import { dateInWords } from '../prose/date.ts';
import type { PlanAnswers } from '../planning/planAnswers.ts';
import { planSurroundings, type FoundSurroundings } from '../planning/planSurroundings.ts';
import { weighPlan } from '../planning/weighPlan.ts';
import type { Answered, Answering } from './deskSetting.ts';
import { planArithmetic } from './planArithmetic.ts';
import { planPage } from './planPage.ts';
import { noPlanProblems, planProblems, type PlanProblems } from './planProblems.ts';
import { submittedPlan } from './planSubmitted.ts';
import { suggestionsOf } from './suggestions.ts';

type Handler = (context: Context) => Answered;

interface PlanHandlers {
  readonly read: Handler;
  readonly write: Handler;
  /** Answers with the arithmetic alone, to be put into a page that is open. */
  readonly workOut: Handler;
}

/** The page on which a test is planned, and what its form does. */
export function planHandlers(answer: Answering): PlanHandlers {
  const { contentDir, places, keys, work, show, sent, notOurs } = answer;
  // Reading every session takes seconds where there are many: it is done when the page is opened, and when a plan is
  // recorded, but not at every letter that is typed in between.
  let known: FoundSurroundings | null = null;
  const surroundings = (): FoundSurroundings => (known ??= planSurroundings(contentDir));
  const page = async (
    context: Context,
    answers: PlanAnswers,
    problems: PlanProblems = noPlanProblems,
  ): Promise<Response> => {
    const main = planPage({
      answers,
      weighed: await weighPlan(answers, surroundings()),
      problems,
      labels: surroundings().labels,
      suggestions: suggestionsOf(contentDir, ''),
      today: dateInWords(work.today()),
      places,
      formToken: keys.form,
    });
    return show(context, 'Plan a test', main);
  };
  return {
    read: (context) => {
      known = null;
      return page(context, {});
    },
    write: async (context) => {
      const form = await sent(context);
      if (form === null) return notOurs(context);
      const answers = submittedPlan(form.texts);
      if (form.texts['do']?.includes('record') !== true) return page(context, answers);
      const recorded = await work.plan(answers);
      return recorded.kind === 'recorded'
        ? context.redirect(`${places.report(recorded.slug)}?planned`, 303)
        : page(context, answers, planProblems(recorded));
    },
    workOut: async (context) => {
      const form = await sent(context);
      if (form === null) return notOurs(context);
      return context.html(planArithmetic(await weighPlan(submittedPlan(form.texts), surroundings())));
    },
  };
}
