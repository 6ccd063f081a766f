import { hiddenFields } from './hiddenFields.ts';
import { answerPart, fold, saveButton, type FormState } from './answerForm.ts';
import { fieldsOf, type AnswerGroup } from './answerGroups.ts';
import type { DeskPlaces } from './deskPlaces.ts';
import { html, type Markup } from './markup.ts';
import type { PlacedProblems } from './placedProblems.ts';
import { problemSection } from './reportPage.ts';
import { toldSection, type Told } from './told.ts';

interface ShopPage {
  readonly groups: readonly AnswerGroup[];
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
export function shopPage({ groups, problems, typed, hash, told, places, formToken }: ShopPage): Markup {
  const [who, ...others] = groups;
  const state: FormState = { problems, suggestions: () => [], shop: null, typed };
  return html`<h1>Your shop</h1>
    ${toldSection(told)} ${problemSection(problems, fieldsOf(groups))}
    <form method="post" action="${places.shop}" class="answers">
      ${hiddenFields({ formToken, seen: hash })}
      ${who === undefined ? '' : who.parts.map((part) => answerPart(part, state))} ${saveButton}
      ${others.map((group) => fold(group, state))} ${others.length === 0 ? '' : saveButton}
    </form>`;
}
