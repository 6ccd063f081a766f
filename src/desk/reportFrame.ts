import type { DeskPlaces, ReportPartId } from './deskPlaces.ts';
import { html, type Markup } from './markup.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';
import type { ReportPart } from './reportPart.ts';
import { reportParts } from './reportParts.ts';
import { toldSection, type Told } from './told.ts';

interface ReportFrame {
  readonly report: ReportAtDesk;
  /** Null on the page of its answers. */
  readonly part: ReportPartId | null;
  readonly told: readonly Told[];
  readonly besideLivePage: boolean;
  readonly places: DeskPlaces;
  readonly main: Markup;
}

/** What stands around every part of a report: its title, the ways to the other parts, and the page beside it. */
export function reportFrame({ report, part, told, besideLivePage, places, main }: ReportFrame): Markup {
  const live = places.livePage(report.slug);
  const way = (to: string, heading: string, isHere: boolean): Markup =>
    html`<li><a href="${to}" ${isHere ? html`aria-current="page"` : ''}>${heading}</a></li>`;
  return html`<div class="at-work">
      <h1>${titleOf(report)}</h1>
      <nav class="parts" aria-label="This report">
        <ul>
          ${way(places.report(report.slug), 'Answers and words', part === null)}
          ${reportParts.map(({ id, heading }: ReportPart) =>
            way(places.part(report.slug, id), heading, id === part),
          )}
        </ul>
      </nav>
      ${toldSection(told)}
      <p class="${besideLivePage ? 'live-link' : ''}"><a href="${live}">The page as it stands</a></p>
      ${main}
    </div>
    ${
      besideLivePage
        ? html`<aside class="live" aria-label="The page as it stands">
            <iframe src="${live}" title="The page as it stands" loading="lazy"></iframe>
          </aside>`
        : ''
    }`;
}

/** What a report is called on the desk. */
export function titleOf({ tree, slug }: ReportAtDesk): string {
  const title = tree?.['title'];
  return typeof title === 'string' && title.trim() !== '' ? title : slug;
}
