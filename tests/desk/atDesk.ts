import type { Hono } from 'hono';
import { renameReport } from '../../src/commands/desk/renameReport.ts';
import { saveText } from '../../src/commands/desk/saveText.ts';
import { draftDropped, draftWaiting } from '../../src/commands/desk/draftDropped.ts';
import { planAtDesk } from '../../src/commands/desk/planAtDesk.ts';
import { deskApp } from '../../src/desk/deskApp.ts';
import { deskKeys } from '../../src/desk/deskKeys.ts';
import type { DeskWork } from '../../src/desk/deskWork.ts';
import { loadSite } from '../../src/site/siteContent.ts';

export const origin = 'http://localhost:4321';

/** A desk over a content folder, and a visitor who came by the printed address. */
export interface AtDesk {
  readonly app: Hono;
  readonly cookie: string;
  readonly formToken: string;
  readonly invitation: () => string;
  /** How often somebody came without a key. */
  readonly uninvited: () => number;
  readonly get: (path: string) => Promise<Response>;
  /** A form as a browser sends it from a page of the desk. */
  readonly post: (
    path: string,
    fields: Readonly<Record<string, string | readonly string[] | File>>,
    headers?: Readonly<Record<string, string>>,
  ) => Promise<Response>;
}

export function atDesk(contentDir: string, work: Partial<DeskWork> = {}): AtDesk {
  let drawn = 0;
  let strangers = 0;
  const keys = deskKeys(() => `word-${(drawn += 1)}`);
  const app = deskApp({
    contentDir,
    base: '/',
    keys,
    work: {
      save: (file, text, seen) => saveText({ contentDir, file, text, seen }),
      draft: (files, placing) => draftDropped(contentDir, files, placing),
      draftWaiting: (names, placing) => draftWaiting(contentDir, names, placing),
      plan: (answers) => planAtDesk(contentDir, answers, { today: '2026-05-09', time: '09:00' }),
      build: () => Promise.resolve({ built: true, said: 'Built.', outDir: '/somewhere' }),
      rename: (renaming) => renameReport({ contentDir, ...renaming }),
      record: () => ({ recorded: true, said: 'Nothing new to record.' }),
      preview: () => Promise.resolve(null),
      today: () => '2026-05-09',
      ...work,
    },
    site: () => loadSite(contentDir),
    uninvited: () => {
      strangers += 1;
    },
  });
  const cookie = `desk-4321=${keys.visitor}`;
  return {
    app,
    cookie,
    formToken: keys.form,
    invitation: keys.invitation,
    uninvited: () => strangers,
    get: async (path) => app.request(`${origin}${path}`, { headers: { cookie } }),
    post: async (path, fields, headers = {}) => {
      const body = new FormData();
      for (const [name, value] of Object.entries({ token: keys.form, ...fields }))
        for (const one of Array.isArray(value) ? value : [value]) body.append(name, one);
      return app.request(`${origin}${path}`, {
        method: 'POST',
        body,
        headers: { cookie, origin, 'sec-fetch-site': 'same-origin', ...headers },
      });
    },
  };
}

/** The hash that a form of the page would send along. */
export const seenIn = (page: string): string => /name="seen" value="([0-9a-f]*)"/.exec(page)?.[1] ?? '';
