/** A value or chart that a narrative can name: `{{ mean carry alder }}`. */
interface NarrativeForm {
  /** The words behind the name of the form, in their order. */
  readonly takes: readonly ('METRIC' | 'NAME' | 'CHART')[];
  readonly means: string;
}

/** Everything that may stand between the braces. */
export const narrativeForms = {
  mean: {
    takes: ['METRIC', 'NAME'],
    means: 'the average of the counted shots, with its unit',
  },
  median: {
    takes: ['METRIC', 'NAME'],
    means: 'their middle reading: half lie below it, half above',
  },
  min: { takes: ['METRIC', 'NAME'], means: 'their least reading, one shot' },
  max: { takes: ['METRIC', 'NAME'], means: 'their greatest reading, one shot' },
  sd: { takes: ['METRIC', 'NAME'], means: 'their spread, as a standard deviation' },
  apart: {
    takes: ['METRIC', 'NAME', 'NAME'],
    means: 'how far two are apart: the best estimate and the likely range',
  },
  answer: {
    takes: ['METRIC', 'NAME', 'NAME'],
    means:
      'what the shots say of two, as a clause; it gets its capital and its full stop where it stands alone',
  },
  shots: { takes: ['NAME'], means: 'how many shots count' },
  chart: {
    takes: ['CHART'],
    means:
      'in a paragraph of its own the chart itself, drawn there; in a sentence its name as a link to it. `apart` stands under the answer in every report and is always a link',
  },
} as const satisfies Readonly<Record<string, NarrativeForm>>;

export type FormName = keyof typeof narrativeForms;

export const formNames = Object.keys(narrativeForms) as readonly FormName[];

export function isFormName(word: string): word is FormName {
  return Object.hasOwn(narrativeForms, word);
}

/** "mean METRIC NAME" */
export const formText = (form: FormName): string => [form, ...narrativeForms[form].takes].join(' ');
