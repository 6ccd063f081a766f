import type { Front } from '../authored/front.ts';
import { splitReport } from '../authored/frontMatter.ts';
import { plan } from '../authored/plan.ts';
import { matters, primary } from '../authored/primary.ts';
import { readWith } from '../authored/readWith.ts';
import { readYaml } from '../authored/yamlText.ts';

/** What a plan binds the shop to, read from a report whose other answers may still be open; null where it is not all there. */
export function plannedAnswers(
  file: string,
  text: string,
): Pick<Front, 'plan' | 'primary' | 'matters'> | null {
  const { yaml } = splitReport(file, text);
  const tree = yaml === null ? null : readYaml(file, yaml).tree;
  if (tree === null) return null;
  const read = {
    plan: readWith(plan, tree['plan']),
    primary: readWith(primary, tree['primary']),
    matters: readWith(matters, tree['matters']),
  };
  if (!('value' in read.plan) || !('value' in read.primary) || !('value' in read.matters)) return null;
  return { plan: read.plan.value, primary: read.primary.value, matters: read.matters.value };
}
