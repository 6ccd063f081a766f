import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Files that take longest, by a part of their path: begun last, one of them would run while the other processor waits. */
const long = [
  'site/accessibility.',
  'commands/desk.',
  'commands/repeat.',
  'commands/unchangedSite.',
  'commands/everyMoment.',
  'commands/cases.',
  'kit/exportedChart.',
  'desk/hostileForms.',
  'kit/reproduce.',
];

const rank = ({ moduleId }: TestSpecification): number => {
  const place = long.findIndex((part) => moduleId.includes(`/tests/${part}`));
  return place < 0 ? long.length : place;
};

/** The usual order, after the files that are known to be long. */
export class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).toSorted((x, y) => rank(x) - rank(y));
  }
}
