import { isBlock, isUnanswered, valueAt, type Path, type Tree } from '../intake/authored/tree.ts';
import type { AnswerField } from './answerFields.ts';
import type { AnswerGroup, AnswerPart } from './answerGroups.ts';
import { isForAll } from './sameForAll.ts';
import { control, type ControlState } from './control.ts';
import { html, type Markup } from './markup.ts';
import type { PlacedProblems } from './placedProblems.ts';
import type { Suggestions } from './suggestions.ts';

/** What the form of a report knows beside its file. */
export interface FormState {
  readonly problems: PlacedProblems;
  readonly suggestions: Suggestions;
  /** What the shop answers for all reports, as typed. */
  readonly shop: Tree;
  /** What was typed and is not in the file, by the name of the field. */
  readonly typed: ReadonlyMap<string, readonly string[]>;
}

/** The questions that must be answered and are not, first; then everything that can be answered, folded by group. */
export function answerForm(groups: readonly AnswerGroup[], state: FormState): Markup {
  const isOpen = ({ required, typed }: AnswerField): boolean => required && typed.length === 0;
  const open = keeping(groups, isOpen, false);
  const rest = keeping(groups, (field) => !isOpen(field), true);
  const asked = open.flatMap(({ parts }) => parts).flatMap(({ fields }) => fields);
  const count = asked.filter((field) => !isForAll(field)).length;
  return html`<section aria-labelledby="must">
      <h2 id="must">
        ${count === 0 ? 'Everything that must be answered is answered' : `Still to be answered (${count})`}
      </h2>
      ${open.map(
        ({ heading, parts }) =>
          html`<h3>${heading}</h3>
            ${parts.map((part) => answerPart(part, state))}`,
      )}
      ${count === 0 ? '' : saveButton}
    </section>
    <section aria-labelledby="all">
      <h2 id="all">All other answers</h2>
      <p class="note">
        Whatever stays empty here is printed as “not recorded” where a reader should know it. "not recorded"
        is an answer too: it is then not asked again.
      </p>
      ${rest.map((group) => fold(group, state))} ${saveButton}
    </section>`;
}

export const saveButton = html`<p class="actions">
  <button type="submit" name="do" value="save">Save</button>
</p>`;

function keeping(
  groups: readonly AnswerGroup[],
  wanted: (field: AnswerField) => boolean,
  withNotes: boolean,
): readonly AnswerGroup[] {
  return groups
    .map((group) => ({
      ...group,
      parts: group.parts
        .filter((part) => part.fields.some(wanted) || (withNotes && part.fields.length === 0))
        .map((part) => ({ ...part, fields: part.fields.filter(wanted) })),
    }))
    .filter(({ parts }) => parts.length > 0);
}

/** One group, folded unless something of it needs a look. */
export function fold({ id, heading, parts }: AnswerGroup, state: FormState): Markup {
  const fields = parts.flatMap(({ fields: own }) => own);
  const answered = fields.filter(({ typed }) => typed.length > 0).length;
  const needsALook = fields.some(({ name }) => state.problems.ofFields.has(name) || state.typed.has(name));
  return html`<details id="group-${id}" ${needsALook ? 'open' : ''}>
    <summary>${heading}: ${answered} of ${fields.length} answered</summary>
    ${parts.map((part) => answerPart(part, state))}
  </details>`;
}

/** The controls of one thing, under its name where it has one. */
export function answerPart({ name, note, fields }: AnswerPart, state: FormState): Markup {
  const controls = fields.map((field) => control(field, stateOf(field, state)));
  return name === null
    ? html`${controls}`
    : html`<fieldset class="part">
        <legend>${name}</legend>
        ${note === undefined ? '' : html`<p class="note">${note}</p>`} ${controls}
      </fieldset>`;
}

function stateOf(field: AnswerField, { problems, suggestions, shop, typed }: FormState): ControlState {
  const own = typed.get(field.name);
  return {
    typed: own ?? field.typed,
    inFile: own === undefined ? null : field.typed,
    problems: problems.ofFields.get(field.name) ?? [],
    suggested: suggestions(field),
    standing: standing(field.path, shop),
  };
}

/** What `shop.yaml` answers in place of a report that does not. */
function standing(path: Path, shop: Tree): string | null {
  if (!isBlock(shop)) return null;
  const [first, ...rest] = path;
  const way =
    first === 'conditions' ? ['defaults', ...rest] : first === 'matters' ? ['defaults', ...path] : path;
  const answer = ['conditions', 'matters', 'interests'].includes(String(first))
    ? valueAt(shop, way)
    : undefined;
  return typeof answer === 'string' && !isUnanswered(answer) ? answer : null;
}
