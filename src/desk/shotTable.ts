import { isMisread } from '../intake/leftOutReadings.ts';
import { visible } from '../problems/visible.ts';
import { metricName } from '../prose/metricName.ts';
import { shortUnit, unitFor } from '../prose/readerUnits.ts';
import { capitalised, counted } from '../prose/words.ts';
import { html, type Markup } from './markup.ts';
import { problemFound, problemText } from './problemText.ts';
import type { ShotRow, ShotsAtDesk, ShotsOfOne } from './shotsAtDesk.ts';

/** Forms of the page that buttons in a row belong to, by their ids. */
export const takeBackForm = 'take-back';
export const misreadForm = 'misread';

interface ShotTable {
  readonly one: ShotsOfOne;
  /** Counts the tables of the page from 0. */
  readonly index: number;
  readonly shots: ShotsAtDesk;
  /** Keys of the shots that are ticked. */
  readonly ticked: ReadonlySet<string>;
}

/** The address on the page of the table of one of what was compared. */
export const tableId = (index: number): string => `shots-${index + 1}`;

/** More shots than these scroll by themselves, so that the forms below stay within reach. */
const mostAtOnce = 24;

/** All shots with one of what was compared, in the order they were hit; those left out are crossed through. */
export function shotTable({ one, index, shots, ticked }: ShotTable): Markup {
  const { name, rows } = one;
  const { golfers, columns, system } = shots;
  const out = rows.filter(({ leftOut }) => leftOut !== null).length;
  const heads = columns.map(({ metric }) => {
    const unit = shortUnit(unitFor(metric, system));
    return `${capitalised(metricName(metric))}${unit === '' ? '' : ` (${unit})`}`;
  });
  const width = 1 + (golfers.length > 1 ? 1 : 0) + heads.length;
  return html`<div
    class="scroll shots${rows.length > mostAtOnce ? ' many' : ''}"
    id="${tableId(index)}"
    role="group"
    aria-labelledby="${tableId(index)}-caption"
    tabindex="0"
  >
    <table>
      <caption id="${tableId(index)}-caption">
        <span class="stays"
          >${visible(name)}: ${counted(rows.length, 'shot')} in the order they were
          hit${out === 0 ? '' : `, ${out === rows.length ? 'all' : counted(out, 'shot')} left out`}</span
        >
      </caption>
      <thead>
        <tr>
          <th scope="col">Shot</th>
          ${golfers.length > 1 ? html`<th scope="col">Golfer</th>` : ''}
          ${heads.map((head) => html`<th scope="col" class="number">${head}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map((row, place) =>
          shotRow(row, { name, width, id: `${tableId(index)}-${place + 1}`, isTicked: ticked.has(row.key) }),
        )}
      </tbody>
    </table>
  </div>`;
}

interface ShownRow {
  readonly name: string;
  /** Columns of the table. */
  readonly width: number;
  readonly id: string;
  readonly isTicked: boolean;
}

function shotRow(row: ShotRow, { name, width, id, isTicked }: ShownRow): Markup {
  const { number, golfer, readings, leftOut, onlyMarked, key } = row;
  const called = visible(`shot ${number} of ${name}${golfer === null ? '' : `, hit by ${golfer}`}`);
  const canGo = leftOut === null || onlyMarked;
  const notes = notesOf(row, called);
  return html`<tr class="${leftOut === null ? '' : 'out'}">
      <th scope="row" class="short">
        ${
          canGo
            ? html`<label class="choice" for="${id}"
                ><input
                  type="checkbox"
                  id="${id}"
                  name="shot"
                  value="${key}"
                  aria-label="Leave out ${called}"
                  ${isTicked ? 'checked' : ''}
                />${number}</label
              >`
            : html`<span class="choice">${number}</span>`
        }
      </th>
      ${golfer === null ? '' : html`<td>${visible(golfer)}</td>`}
      ${readings.map((reading) => html`<td class="number">${reading ?? '–'}</td>`)}
    </tr>
    ${
      notes.length === 0
        ? ''
        : html`<tr class="told">
            <td colspan="${width}"><div class="stays">${notes}</div></td>
          </tr>`
    }`;
}

/** What is told of a shot below its readings. */
function notesOf(row: ShotRow, called: string): readonly Markup[] {
  const { leftOut, leftOutBy, onlyMarked, alike, problems, misread, key } = row;
  const [first] = leftOutBy;
  return [
    ...(leftOut === null
      ? []
      : [
          html`<p>
            ${onlyMarked ? 'Marked in the file' : 'Left out'}:
            ${visible(onlyMarked ? leftOut.reason : `${leftOut.rule}. ${leftOut.reason}`)}
          </p>`,
        ]),
    ...(onlyMarked
      ? [html`<p>It does not count. Tick it to say by which rule and why.</p>`]
      : first === undefined
        ? []
        : [takeBack(row, first, called)]),
    ...(alike > 1
      ? [html`<p>${capitalised(counted(alike, 'shot'))} have this number: left out, they all are.</p>`]
      : []),
    ...problems.map(
      (problem) =>
        html`<p class="${problem.severity === 'error' ? 'error' : 'warning'}">
          ${isMisread(problem) ? problemFound(problem) : problemText(problem)}
        </p>`,
    ),
    ...(misread === null
      ? []
      : [
          html`<p>
            <button form="${misreadForm}" name="misread" value="${key}">
              Leave out ${called}, as ${misread.rule}
            </button>
          </p>`,
          html`<p>Reason: ${visible(misread.reason)}</p>`,
        ]),
  ];
}

/** A limit holds for all alike: it is not taken back at one shot. */
function takeBack({ namedBy }: ShotRow, first: number, called: string): Markup {
  return namedBy === null
    ? html`<p>By a <a href="#${entryId(first)}">limit for all alike</a>.</p>`
    : html`<p>
        <button form="${takeBackForm}" name="take-back" value="${namedBy}">Take ${called} back in</button>
      </p>`;
}

/** The address on the page of an entry, counted from 0. */
export const entryId = (entry: number): string => `entry-${entry + 1}`;
