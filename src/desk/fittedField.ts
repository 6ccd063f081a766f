import { metricNamed } from '../intake/authored/metricName.ts';
import { interestQuestions } from '../intake/authored/interests.ts';
import type { Path } from '../intake/authored/tree.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import { units } from '../trade/units.ts';
import { asChoice, type AnswerField, type Choice } from './answerFields.ts';
import { fieldLabel } from './fieldLabel.ts';

/** What only the session and its folder can say of the answers. */
export interface SessionKnown {
  /** Metrics that the session has columns for. */
  readonly measured: readonly MetricId[];
  /** CSV files that lie beside the report and hold none of its shots. */
  readonly sheets: readonly string[];
}

type Fitting = (field: AnswerField, known: SessionKnown) => AnswerField | null;

/** A field with the answers that this session leaves; null where there is nothing to ask. */
export const fittedField: Fitting = (field, known) => {
  const [, fit] = fittings.find(([way]) => leads(field.path, way)) ?? [];
  return fit === undefined ? field : fit(field, known);
};

/** Whether a path leads along a way; null is any step. */
const leads = (path: Path, way: readonly (string | null)[]): boolean =>
  path.length === way.length && way.every((step, index) => step === null || step === path[index]);

const oneOf = (field: AnswerField, choices: readonly Choice[]): AnswerField => ({
  ...field,
  help: null,
  control: 'one-of',
  choices,
});

const asMetrics = ({ typed }: AnswerField): readonly string[] => typed.map((one) => metricNamed(one) ?? one);

const primary: Fitting = (field, { measured }) =>
  measured.length === 0
    ? field
    : {
        ...field,
        help: null,
        control: 'some-of',
        choices: measured.map((id) => ({ value: id, words: metrics[id].name })),
        typed: asMetrics(field),
      };

const unit: Fitting = (field) => {
  const metric = Object.values(metrics).find(({ id }) => id === field.path[1]);
  const fitting = Object.values(units).filter(
    (each) => metric !== undefined && each.dimensions.includes(metric.dimension),
  );
  return fitting.length === 0
    ? field
    : {
        ...oneOf(
          field,
          fitting.map(({ id }) => asChoice(id)),
        ),
        label: `The unit of ${metric?.name ?? ''}`,
      };
};

const direction: Fitting = (field) =>
  oneOf(field, [
    { value: '', words: 'As usual' },
    { value: 'more', words: 'More is better' },
    { value: 'less', words: 'Less is better' },
    { value: 'neither', words: 'Neither is' },
  ]);

const rows: Fitting = (field) => ({
  ...oneOf(field, [
    { value: '', words: 'They stand in the order of hitting' },
    { value: 'not-in-hit-order', words: 'They do not' },
  ]),
  label: 'The rows of the session files',
  help: 'If they do not, say in what order it was hit, under “What was decided before hitting”',
});

const orderSheet: Fitting = (field, { sheets }) => {
  const names = [...new Set([...sheets, ...field.typed])];
  return names.length === 0 ? null : oneOf(field, [{ value: '', words: 'None' }, ...names.map(asChoice)]);
};

const calculable: readonly MetricId[] = ['carry', 'apex', 'descent_angle'];

const modelled: Fitting = (field, { measured }) => {
  const typed = asMetrics(field);
  const open = calculable.filter((id) => !measured.includes(id) || typed.includes(id));
  if (open.length === 0) return null;
  const choices = open.map((id) => ({ value: id, words: metrics[id].name }));
  return { ...field, help: null, control: 'some-of', choices, typed };
};

const interest: Fitting = (field) => {
  const [, question] = Object.entries(interestQuestions).find(([key]) => key === field.path[1]) ?? [];
  return question === undefined ? field : { ...field, label: fieldLabel(question) };
};

const fittings: readonly (readonly [readonly (string | null)[], Fitting])[] = [
  [['primary'], primary],
  [['columns', null, 'unit'], unit],
  [['better'], direction],
  [['better', null], direction],
  [['rows'], rows],
  [['order_sheet'], orderSheet],
  [['modelled'], modelled],
  [['interests', null], interest],
];
