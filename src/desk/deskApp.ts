import { Hono, type Context, type MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { secureHeaders } from 'hono/secure-headers';
import { canBeAddress } from '../intake/authored/reportName.ts';
import { addressHandler } from './addressHandler.ts';
import { answering } from './answering.ts';
import type { DeskSetting } from './deskSetting.ts';
import { frontHandlers } from './frontHandlers.ts';
import { guard } from './guard.ts';
import { html } from './markup.ts';
import { planHandlers } from './planHandlers.ts';
import { planSheet } from './planSheet.ts';
import { partHandlers } from './partHandlers.ts';
import { reportHandlers } from './reportHandlers.ts';
import { reportParts } from './reportParts.ts';
import { shopHandlers } from './shopHandlers.ts';

/** Bytes of one form at most, its files among them. */
const largestForm = 20_000_000;

/** The pages of the desk, from a request to an answer; everything outside itself is passed in. */
export function deskApp(setting: DeskSetting): Hono {
  const answer = answering(setting);
  const { keys, places, uninvited, refuse, show } = answer;
  // An address is the same with and without the slash at its end.
  const app = new Hono({ strict: false }).basePath('/desk');
  // What stands first sets its headers last.
  app.use('/plan', headersFor({ connectSrc: ["'self'"] }));
  // A file of the shop's own, with its style inside: it runs nothing and asks for nothing.
  app.use('/plan/:slug/sheet', headersFor({ sandbox: [''], styleSrc: ["'unsafe-inline'"] }));
  app.use(
    headersFor({}),
    async (context, next) => {
      await next();
      // A page kept by the browser would show answers that were changed since.
      context.header('Cache-Control', 'no-store');
    },
    guard({ keys, places, refuse: refuse(403), uninvited }),
    bodyLimit({
      maxSize: largestForm,
      onError: (context) =>
        refuse(413)(
          context,
          `That is too much at once: ${largestForm / 1_000_000} MB are taken. Nothing was written. Choose fewer files, or split the session over several.`,
        ),
    }),
  );
  app.onError((error, context) =>
    show(
      context,
      'Not done',
      html`<h1>Not done</h1>
        <p>This was not foreseen: ${error.message}</p>`,
      { status: 500 },
    ),
  );
  app.notFound((context) => refuse(404)(context, 'There is no such page on the desk.'));

  const front = frontHandlers(answer);
  app.get('/', front.read);
  app.post('/files', front.takeFiles);
  app.post('/waiting', front.takeWaiting);
  app.post('/build', front.build);
  app.get('/built', front.built);
  app.post('/record', front.record);
  const shop = shopHandlers(answer);
  app.get('/shop', shop.read);
  app.post('/shop', shop.write);
  const plan = planHandlers(answer);
  app.get('/plan', plan.read);
  app.post('/plan', plan.write);
  app.post('/plan/arithmetic', plan.workOut);
  const sheet = planSheet(answer);
  app.get('/plan/:slug/sheet', (context) => sheet(context, named(context)));
  const report = reportHandlers(answer);
  app.get('/reports/:slug', (context) => report.read(context, named(context)));
  app.post('/reports/:slug', (context) => report.write(context, named(context)));
  const address = addressHandler(answer);
  app.post('/reports/:slug/address', (context) => address(context, named(context)));
  for (const part of reportParts) {
    const { read, write } = partHandlers(answer, part);
    app.get(`/reports/:slug/${part.id}`, (context) => read(context, named(context)));
    app.post(`/reports/:slug/${part.id}`, (context) => write(context, named(context)));
  }
  return app;
}

/**
 * Nothing from elsewhere, nothing of ours in a frame elsewhere, forms to this very place only.
 *
 * @param more what one page needs beyond that, or in its place
 */
const headersFor = (more: {
  readonly connectSrc?: string[];
  readonly styleSrc?: string[];
  readonly sandbox?: string[];
}): MiddlewareHandler =>
  secureHeaders({
    contentSecurityPolicy: {
      defaultSrc: ["'none'"],
      styleSrc: ["'self'"],
      fontSrc: ["'self'"],
      imgSrc: ["'self'"],
      scriptSrc: ["'self'"],
      frameSrc: ["'self'"],
      formAction: ["'self'"],
      baseUri: ["'none'"],
      frameAncestors: ["'none'"],
      ...more,
    },
    xFrameOptions: 'DENY',
    // Without a referrer a browser would not say either where a form was sent from.
    referrerPolicy: 'same-origin',
    strictTransportSecurity: false,
  });

/** The name of a report in an address; one that none has where it can be no report's. */
function named(context: Context): string {
  const slug = context.req.param('slug') ?? '';
  return canBeAddress.test(slug) ? slug : '';
}
