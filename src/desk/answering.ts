import type { Context } from 'hono';
import { deskPage } from './deskPage.ts';
import { deskPlaces } from './deskPlaces.ts';
import { isSame } from './deskKeys.ts';
import type { Answering, DeskSetting } from './deskSetting.ts';
import { html } from './markup.ts';
import { readForm } from './readForm.ts';
import { shopName } from './shopAtDesk.ts';

/** How the pages of one desk answer. */
export function answering(setting: DeskSetting): Answering {
  const { contentDir, base, keys } = setting;
  const places = deskPlaces(base);
  const refuse: Answering['refuse'] = (status) => (context, sentence) =>
    context.html(
      deskPage({
        title: 'Not done',
        shop: null,
        places,
        main: html`<h1>Not done</h1>
          <p>${sentence}</p>`,
      }),
      status,
    );
  return {
    ...setting,
    places,
    refuse,
    show: (context, title, main, { status = 200, wide = false } = {}) =>
      context.html(deskPage({ title, shop: shopName(contentDir), places, main, wide }), status),
    sent: async (context: Context) => {
      const form = await readForm(context);
      return form !== null && isSame(form.texts['token']?.[0] ?? '', keys.form) ? form : null;
    },
    noReport: (context) =>
      refuse(404)(context, 'There is no report of that name, or its file cannot be read.'),
    notOurs: (context) =>
      refuse(403)(
        context,
        'This form is of an earlier run of the desk, or did not arrive whole. Nothing was written. Go back, copy what you typed, and load the page anew.',
      ),
  };
}
