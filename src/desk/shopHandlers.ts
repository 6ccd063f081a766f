import type { Context } from 'hono';
import { changedMeanwhile } from './changedMeanwhile.ts';
import { schemaLine } from '../intake/authored/schemaLine.ts';
import { contentVersion } from '../intake/authored/shop.ts';
import { editAnswers } from '../intake/edits/editAnswers.ts';
import { shopFile } from '../site/sharedFiles.ts';
import { fieldsOf } from './answerGroups.ts';
import type { Answered, Answering } from './deskSetting.ts';
import { shopAtDesk } from './shopAtDesk.ts';
import { shopPage } from './shopPage.ts';
import { changedAnswers, editsOf, type ChangedAnswer } from './submittedAnswers.ts';
import type { Told } from './told.ts';

type Handler = (context: Context) => Answered;

/** What `shop.yaml` begins with where there was none. */
const opening = `${schemaLine('shop', '')}\nschema: ${contentVersion}\n`;

/** The page on which a shop says who it is, and what its form does. */
export function shopHandlers(answer: Answering): { readonly read: Handler; readonly write: Handler } {
  const { contentDir, places, keys, work, show, sent, notOurs } = answer;
  const page = (context: Context, told: readonly Told[], kept: readonly ChangedAnswer[] = []): Answered => {
    const { groups, problems, hash } = shopAtDesk(contentDir);
    const typed = new Map(kept.map(({ field, typed: own }) => [field.name, own]));
    const main = shopPage({
      groups,
      problems,
      typed,
      hash: hash ?? '',
      told,
      places,
      formToken: keys.form,
    });
    return show(context, 'Your shop', main);
  };
  return {
    read: (context) => page(context, []),
    write: async (context) => {
      const form = await sent(context);
      if (form === null) return notOurs(context);
      const { text, hash, groups } = shopAtDesk(contentDir);
      const changed = changedAnswers(fieldsOf(groups), form.texts);
      const refused = (sentence: string): Answered => page(context, [{ kind: 'refused', sentence }], changed);
      if ((form.texts['seen']?.[0] ?? '') !== (hash ?? ''))
        return refused(
          changedMeanwhile(
            'What you typed stands in the form; save again to put it in place of what the file says.',
          ),
        );
      if (changed.length === 0) return page(context, [{ kind: 'done', sentence: 'Nothing was changed.' }]);
      const edited = editAnswers(hash === null ? opening : text, editsOf(changed));
      if ('refused' in edited) return refused(`Nothing was written. ${edited.refused}`);
      const saved = work.save(shopFile, edited.text, hash);
      if (saved.kind === 'refused') return refused(saved.why);
      if (saved.kind === 'changed') return refused('The file was changed at this very moment. Save again.');
      return page(context, [{ kind: 'done', sentence: 'Saved.' }]);
    },
  };
}
