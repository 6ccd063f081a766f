import type { FigureId } from '../charts/charts.ts';
import type { ExportChoice } from '../intake/authored/exports.ts';
import type { UnitSystem } from '../prose/readerUnits.ts';

/** Forms of any chart that leaves its page: `wide` for a column of text, `phone` for a screen of 360 px. */
export const chartForms = ['wide', 'phone'] as const;
export type ChartForm = (typeof chartForms)[number];

/** Forms of a report's first chart alone, as they are shown and printed elsewhere. */
export const leadForms = ['square', 'upright', 'video', 'lower-third', 'print'] as const;
export type LeadForm = (typeof leadForms)[number];

export type ExportForm = ChartForm | LeadForm;

/** Whether every chart has it. */
export const isChartForm = (form: ExportForm): form is ChartForm => chartForms.some((one) => one === form);

/** The choice of the shop that each form waits for; null where it is always made. */
const askedBy: Readonly<Record<ExportForm, ExportChoice | null>> = {
  wide: null,
  phone: 'phone',
  square: 'square',
  upright: 'upright',
  video: 'video',
  'lower-third': 'video',
  print: 'print',
};

/** A picture that is given away. */
export interface ExportedPicture {
  readonly figure: FigureId;
  readonly form: ExportForm;
  readonly units: UnitSystem;
  /** "apart-in-metres-phone": the name of its file without the ending; the wide one in the shop's units has the chart's. */
  readonly name: string;
}

/**
 * Every picture of one chart that a site gives away.
 *
 * @param own the units of the shop
 * @param leads whether it is the first chart of its report: its phone form goes into every mail
 */
export function exportedPictures(
  figure: FigureId,
  {
    own,
    choices,
    leads,
  }: { readonly own: UnitSystem; readonly choices: readonly ExportChoice[]; readonly leads: boolean },
): readonly ExportedPicture[] {
  const forms = ([...chartForms, ...(leads ? leadForms : [])] as const).filter((form) => {
    const choice = askedBy[form];
    return choice === null || choices.includes(choice) || (leads && form === 'phone');
  });
  const other: UnitSystem = own === 'yards' ? 'metres' : 'yards';
  const systems = choices.includes('other-units') ? [own, other] : [own];
  return systems.flatMap((units) =>
    forms.map((form) => ({
      figure,
      form,
      units,
      name: pictureName(figure, form, units === own ? null : units),
    })),
  );
}

/** @param other the units, where they are not those of the shop */
export function pictureName(figure: FigureId, form: ExportForm, other: UnitSystem | null): string {
  return [figure, ...(other === null ? [] : [`in-${other}`]), ...(form === 'wide' ? [] : [form])].join('-');
}
