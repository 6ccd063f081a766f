import type { ProblemKind } from '../../problems/kinds.ts';
import { makeProblem } from '../../problems/makeProblem.ts';
import type { Place, Problem } from '../../problems/problem.ts';

export type ProblemWords = Parameters<typeof makeProblem>[2];

/** Takes down one problem of the file being read: its place, as far as it has one, and what is said of it. */
export type Report = (kind: ProblemKind, told: Partial<Omit<Place, 'file'>> & ProblemWords) => void;

interface Collector {
  readonly report: Report;
  /** Everything taken down, by line and column; what concerns the whole file first. */
  readonly problems: () => readonly Problem[];
}

/** What to do, as a sentence: a capital in front, a full stop behind. */
export function asSentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${text.endsWith('.') ? '' : '.'}`;
}

const cures = ({ cure, cureAtDesk }: ProblemWords): Pick<ProblemWords, 'cure' | 'cureAtDesk'> => ({
  cure: asSentence(cure),
  ...(cureAtDesk === undefined ? {} : { cureAtDesk: asSentence(cureAtDesk) }),
});

/** From here on problems of one kind in one column are counted rather than listed. */
const listed = 50;

const andMore = (problem: Problem, more: string): Problem => ({
  ...problem,
  cure: problem.cure + more,
  ...(problem.cureAtDesk === undefined ? {} : { cureAtDesk: problem.cureAtDesk + more }),
});

/** Collects the problems of one file, and counts rather than lists them where one cause makes thousands. */
export function collectProblems(file: string): Collector {
  const groups = new Map<string, { readonly shown: Problem[]; more: number }>();
  return {
    report(kind, told) {
      const { line = null, column = null, columnName = null } = told;
      const key = `${kind} ${column ?? ''}`;
      const group = groups.get(key) ?? { shown: [], more: 0 };
      groups.set(key, group);
      const said = group.shown.some(
        (each) => each.line === line && each.column === column && each.found === told.found,
      );
      if (said) return;
      if (group.shown.length < listed)
        group.shown.push(makeProblem(kind, { file, line, column, columnName }, { ...told, ...cures(told) }));
      else group.more += 1;
    },
    problems() {
      const all = [...groups.values()].flatMap(({ shown, more }) => {
        const last = shown.at(-1);
        if (more === 0 || last === undefined) return shown;
        return [...shown.slice(0, -1), andMore(last, ` There are ${more} more like this further down.`)];
      });
      return all.sort((a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0));
    },
  };
}
