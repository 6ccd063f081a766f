import type { Context } from 'hono';
import type { SiteContent } from '../site/siteContent.ts';
import type { DeskKeys } from './deskKeys.ts';
import type { DeskPlaces } from './deskPlaces.ts';
import type { DeskWork } from './deskWork.ts';
import type { Markup } from './markup.ts';
import type { ReadForm } from './readForm.ts';

/** All that the desk stands on. */
export interface DeskSetting {
  readonly contentDir: string;
  /** The path below which the site lies, `/` for most. */
  readonly base: string;
  readonly keys: DeskKeys;
  readonly work: DeskWork;
  /** The content as it lies on the disk. */
  readonly site: () => SiteContent;
  /** Told when somebody came without a key. */
  readonly uninvited: () => void;
}

export type Answered = Response | Promise<Response>;

/** How a handler answers, the same for all pages of the desk. */
export interface Answering extends DeskSetting {
  readonly places: DeskPlaces;
  readonly show: (
    context: Context,
    title: string,
    main: Markup,
    more?: { readonly status?: 200 | 500; readonly wide?: boolean },
  ) => Answered;
  readonly refuse: (status: 403 | 404 | 413) => (context: Context, sentence: string) => Answered;
  /** A form with the token of this desk; null where it has none, or cannot be read. */
  readonly sent: (context: Context) => Promise<ReadForm | null>;
  /** The answer to a form without it. */
  readonly notOurs: (context: Context) => Answered;
  /** The answer where there is no report that can be read. */
  readonly noReport: (context: Context) => Answered;
}
