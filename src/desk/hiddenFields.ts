import { html, type Markup } from './markup.ts';

/** What every form of the desk sends along: the token of this desk, and the file as it was when the form was made. */
export const hiddenFields = ({
  formToken,
  seen = null,
}: {
  readonly formToken: string;
  readonly seen?: string | null;
}): Markup =>
  html`<input type="hidden" name="token" value="${formToken}" />${
      seen === null ? '' : html`<input type="hidden" name="seen" value="${seen}" />`
    }`;
