import { html } from 'hono/html';

/** A piece of a page, every text in it escaped. */
export type Markup = ReturnType<typeof html>;

export { html };
