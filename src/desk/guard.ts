import type { Context, MiddlewareHandler } from 'hono';
import { getCookie, setCookie } from 'hono/cookie';
import { ownAddress } from '../site/ownAddress.ts';
import { isSame, type DeskKeys } from './deskKeys.ts';
import type { DeskPlaces } from './deskPlaces.ts';

interface Guard {
  readonly keys: DeskKeys;
  readonly places: DeskPlaces;
  /** Answers a request that is refused. */
  readonly refuse: (context: Context, sentence: string) => Response | Promise<Response>;
  /** Told when somebody came without a key, so that the address can be printed anew. */
  readonly uninvited: () => void;
}

/**
 * Lets through only who started the desk: by its own name (or a page elsewhere could point a name of its own at this
 * machine), with the cookie that the printed address gives, and to write only from this very site.
 */
export function guard({ keys, places, refuse, uninvited }: Guard): MiddlewareHandler {
  return async (context, next) => {
    const own = ownAddress(context.req.header('host') ?? new URL(context.req.url).host);
    if (own === null) return refuse(context, 'The desk answers under localhost and 127.0.0.1 only.');
    const cookie = `desk-${own.port === '' ? '80' : own.port}`;
    const word = context.req.query('token');
    const isVisitor = isSame(getCookie(context, cookie) ?? '', keys.visitor);
    if (word !== undefined && context.req.method === 'GET') {
      if (!isVisitor && keys.accepts(word))
        setCookie(context, cookie, keys.visitor, { path: places.front, httpOnly: true, sameSite: 'Strict' });
      // Without the word, so that it stays in no history.
      return context.redirect(places.front, 303);
    }
    if (!isVisitor) {
      uninvited();
      return refuse(
        context,
        'This desk opens by the address that stands in the window in which it was started. Copy it from there.',
      );
    }
    if (!isRead(context) && !isFromHere(context, own.origin))
      return refuse(context, 'This was not sent from a page of the desk. Nothing was written.');
    return next();
  };
}

const isRead = (context: Context): boolean => ['GET', 'HEAD'].includes(context.req.method);

/** A browser says where a form was sent from, in one of two headers at least; neither may name another place. */
function isFromHere(context: Context, own: string): boolean {
  const site = context.req.header('sec-fetch-site');
  const origin = context.req.header('origin');
  if (site === undefined && origin === undefined) return false;
  return (site === undefined || site === 'same-origin') && (origin === undefined || origin === own);
}
