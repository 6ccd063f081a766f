import { hiddenFields } from './hiddenFields.ts';
import type { AnswerField } from './answerFields.ts';
import { control } from './control.ts';
import type { DeskPlaces } from './deskPlaces.ts';
import { html, type Markup } from './markup.ts';
import type { PlacedProblems } from './placedProblems.ts';
import { problemSection } from './reportPage.ts';
import { toldSection, type Told } from './told.ts';

interface ShopPage {
  readonly fields: readonly AnswerField[];
  readonly problems: PlacedProblems;
  /** What was typed and is not in the file, by the name of the field. */
  readonly typed: ReadonlyMap<string, readonly string[]>;
  /** SHA-256 of `shop.yaml`; empty where there is none. */
  readonly hash: string;
  readonly told: readonly Told[];
  readonly places: DeskPlaces;
  readonly formToken: string;
}

/** Who publishes, and what holds for all reports. */
export function shopPage({ fields, problems, typed, hash, told, places, formToken }: ShopPage): Markup {
  return html`<h1>Your shop</h1>
    ${toldSection(told)} ${problemSection(problems, fields)}
    <form method="post" action="${places.shop}" class="answers">
      ${hiddenFields({ formToken, seen: hash })}
      ${fields.map((field) => {
        const own = typed.get(field.name);
        return control(field, {
          typed: own ?? field.typed,
          inFile: own === undefined ? null : field.typed,
          problems: problems.ofFields.get(field.name) ?? [],
          suggested: [],
          standing: null,
        });
      })}
      <p class="actions"><button type="submit">Save</button></p>
    </form>`;
}
