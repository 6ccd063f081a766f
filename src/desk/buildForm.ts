import type { DeskPlaces } from './deskPlaces.ts';
import { hiddenFields } from './hiddenFields.ts';
import { html, type Markup } from './markup.ts';

/** The button that builds the site. */
export const buildForm = (places: DeskPlaces, formToken: string): Markup =>
  html`<form method="post" action="${places.build}">
    ${hiddenFields({ formToken })}
    <p class="actions"><button type="submit">Build the site</button></p>
    <p><a href="${places.built}">See the site as it was last built</a></p>
  </form>`;
