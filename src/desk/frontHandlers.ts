import type { Context } from 'hono';
import { visible } from '../problems/visible.ts';
import type { Answered, Answering } from './deskSetting.ts';
import type { Drafted, MaybePlanned } from './deskWork.ts';
import { frontPage } from './frontPage.ts';
import { ifWarmUps } from '../planning/planWords.ts';
import { submittedPlacing } from './planPlacing.ts';
import { plansAtDesk } from './plansAtDesk.ts';
import { reportRows } from './reportRows.ts';
import type { Told } from './told.ts';

type Handler = (context: Context) => Answered;

interface FrontHandlers {
  readonly read: Handler;
  readonly takeFiles: Handler;
  readonly takeWaiting: Handler;
  readonly build: Handler;
  readonly built: Handler;
  readonly record: Handler;
}

/** The first page of the desk, and what its forms do. */
export function frontHandlers(answer: Answering): FrontHandlers {
  const { contentDir, work, site, places, keys, show, sent, notOurs } = answer;
  const front = (context: Context, told: readonly Told[] = [], said: string | null = null): Answered => {
    const content = site();
    const page = frontPage({
      rows: reportRows(contentDir, content),
      waiting: content.waiting,
      plans: plansAtDesk(contentDir),
      shopIsKnown: content.shop !== null,
      told,
      said,
      places,
      formToken: keys.form,
    });
    return show(context, 'Reports', page);
  };
  const refused = (context: Context, sentence: string): Answered =>
    front(context, [{ kind: 'refused', sentence }]);
  const drafted = (context: Context, { slug, joinsPlan, unsure, said }: Drafted): Answered => {
    if (slug !== null) return context.redirect(`${places.report(slug)}?${joinsPlan ? 'joined' : 'new'}`, 303);
    if (unsure.length > 0) return front(context, [maybePlanned(unsure)]);
    const sentence = 'No report was made of these files.';
    return front(context, [{ kind: 'refused', sentence }], visibleLines(said));
  };
  return {
    read: (context) => front(context),
    takeFiles: async (context) => {
      const form = await sent(context);
      if (form === null) return notOurs(context);
      if (form.files.length === 0) return refused(context, 'Choose the files of a session first.');
      const placing = submittedPlacing(form.texts);
      if (placing.kind === 'refused') return refused(context, placing.sentence);
      return drafted(context, work.draft(form.files, placing));
    },
    takeWaiting: async (context) => {
      const form = await sent(context);
      if (form === null) return notOurs(context);
      const names = form.texts['names'] ?? [];
      if (names.length === 0) return refused(context, 'Tick the files of a session first.');
      const placing = submittedPlacing(form.texts);
      if (placing.kind === 'refused') return refused(context, placing.sentence);
      return drafted(context, work.draftWaiting(names, placing));
    },
    build: async (context) => {
      const form = await sent(context);
      if (form === null) return notOurs(context);
      const { built, said, outDir } = await work.build();
      const told: Told = built
        ? {
            kind: 'done',
            sentence: `Your site is built. It lies in ${visible(outDir)}.`,
            way: { to: places.built, words: 'See it as readers will.' },
          }
        : { kind: 'refused', sentence: 'Your site was not built. If there was one before, it is as it was.' };
      return front(context, [told], visibleLines(said));
    },
    record: async (context) => {
      const form = await sent(context);
      if (form === null) return notOurs(context);
      const { recorded, said } = work.record();
      const told: Told = recorded
        ? { kind: 'done', sentence: 'Put on record.' }
        : { kind: 'refused', sentence: 'Not everything could be put on record.' };
      return front(context, [told], visibleLines(said));
    },
    built: async (context) => {
      const address = await work.preview();
      return address === null
        ? refused(context, 'There is no built site yet. Build it first, at the end of this page.')
        : context.redirect(address, 302);
    },
  };
}

/** Files that may belong to a plan are for the person to place. */
const maybePlanned = (plans: readonly MaybePlanned[]): Told => ({
  kind: 'refused',
  sentence: [
    'This may be the session of a test that was planned, but that is not sure. Nothing was written.',
    ...plans.map(({ slug, why, warmUps }) =>
      visible(
        `${slug}: ${why}${warmUps === null ? '' : `; ${ifWarmUps(warmUps)}, write ${warmUps} where warm-up swings are asked for`}.`,
      ),
    ),
    'Choose the files again, and say below to which plan they belong.',
  ].join(' '),
});

const visibleLines = (text: string): string => text.trim().split('\n').map(visible).join('\n');
