import type { NamedHitter } from '../rowHitters.ts';
import { shotsOf } from '../shotsOf.ts';
import { exclusions, type ExclusionEntry } from '../authored/exclusions.ts';
import { splitReport } from '../authored/frontMatter.ts';
import { firstLine } from '../authored/places.ts';
import type { Shared } from '../authored/shared.ts';
import { isBlock, type Tree } from '../authored/tree.ts';
import { readWith } from '../authored/readWith.ts';
import { readYaml } from '../authored/yamlText.ts';
import type { NamedContender } from '../contenderNames.ts';
import { applyExclusions, entriesFor, shotNumbers } from '../exclusionsOf.ts';
import type { Shot } from '../session.ts';
import type { ShotFile } from '../shots/shotFile.ts';

/** A shot as a report has it whose answers need not be complete. */
export interface LooseShot {
  readonly shot: Shot;
  /** The number by which an entry under `exclusions` names it. */
  readonly number: number;
  /** The places, from 0, of the entries that leave it out; none where only the file marks it. */
  readonly leftOutBy: readonly number[];
}

/** One entry under `exclusions`, as typed and as far as it can be used. */
interface LooseEntry {
  readonly typed: Tree;
  /** Null where it cannot be used as it stands. */
  readonly entry: ExclusionEntry | null;
}

/** The shots of a report with what it leaves out, as far as they can be told. */
export interface LooseShots {
  /** In the order of the report. */
  readonly contenders: readonly NamedContender[];
  readonly hitters: readonly NamedHitter[];
  /** In hit order; those of nobody in the report are not among them. */
  readonly shots: readonly LooseShot[];
  readonly entries: readonly LooseEntry[];
}

/** A report as it was typed, whether it can be used or not. */
export interface TypedReport {
  /** Path of `report.md` from the content folder. */
  readonly file: string;
  readonly text: string;
  readonly shared: Shared;
}

/** Joins session files with as much of a report as can be used by itself. */
export function looseShots({ file, text, shared }: TypedReport, files: readonly ShotFile[]): LooseShots {
  const { yaml } = splitReport(file, text);
  const { tree, keysInOrder } = yaml === null ? { tree: null, keysInOrder: () => [] } : readYaml(file, yaml);
  const contenders = contendersIn(tree?.['contenders'], keysInOrder('contenders'), shared);
  const named = hittersIn(tree?.['hitters'], keysInOrder('hitters'));
  // A report that lists nobody yet is taken to have one hitter, as long as the files name none.
  const hitters = named.length === 0 ? [{ id: 'one' }] : named;
  const entries = entriesIn(tree?.['exclusions']);
  const read = shotsOf(files, { contenders, hitters });
  const usable = entries.flatMap(({ entry }) => entry ?? []);
  const marked = applyExclusions(read, usable, (index) => firstLine(file)(['exclusions', index])).shots;
  const numbers = shotNumbers(read);
  return {
    contenders,
    hitters,
    entries,
    shots: read.map((raw, index) => {
      const number = numbers.get(raw) ?? raw.order;
      const by = new Set(entriesFor(raw, number, usable));
      return {
        shot: marked[index] ?? raw,
        number,
        leftOutBy: entries.flatMap(({ entry }, at) => (entry !== null && by.has(entry) ? [at] : [])),
      };
    }),
  };
}

function contendersIn(
  answer: Tree | undefined,
  order: readonly string[],
  { contenders: sheets }: Pick<Shared, 'contenders'>,
): readonly NamedContender[] {
  if (Array.isArray(answer)) {
    const ids = answer.filter((id): id is string => typeof id === 'string');
    return ids.map((id) => sheets.get(id) ?? { id, label: id });
  }
  if (!isBlock(answer)) return [];
  return order.map((id): NamedContender => {
    const one = answer[id];
    const { label, short, match } = isBlock(one) ? one : {};
    return {
      id,
      label: isText(label) ? label : id,
      ...(isText(short) ? { short } : {}),
      match: textsIn(match),
    };
  });
}

function hittersIn(answer: Tree | undefined, order: readonly string[]): readonly NamedHitter[] {
  if (!isBlock(answer)) return [];
  return order.map((id) => {
    const one = answer[id];
    return { id, match: textsIn(isBlock(one) ? one['match'] : undefined) };
  });
}

function entriesIn(answer: Tree | undefined): readonly LooseEntry[] {
  if (!Array.isArray(answer)) return [];
  return answer.map((typed: Tree): LooseEntry => {
    const read = readWith(exclusions, [typed]);
    return { typed, entry: ('value' in read ? read.value[0] : undefined) ?? null };
  });
}

const isText = (answer: Tree | undefined): answer is string =>
  typeof answer === 'string' && answer.trim() !== '';

const textsIn = (answer: Tree | undefined): readonly string[] =>
  (Array.isArray(answer) ? (answer as readonly Tree[]) : [answer]).filter(isText);
