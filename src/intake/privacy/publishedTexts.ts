import type { Source } from '../authored/source.ts';
import { isBlock, valueAt, type Path, type Tree } from '../authored/tree.ts';
import type { Place } from '../../problems/problem.ts';

/** A text of a report that readers see, with its place and what it is. */
interface PublishedText {
  readonly place: Partial<Place> & { readonly file: string };
  readonly text: string;
  /** In words, to stand behind the name of something found there: "in the title". */
  readonly what: string;
}

/** Answers that say which file, column or row is meant: they are looked at as such, or never printed. */
const notProse = new Set(['session', 'order_sheet', 'columns', 'match', 'hitter', 'seen', 'aliases']);

const whatByKey: Readonly<Record<string, string>> = {
  title: 'in the title',
  summary: 'in the summary',
  question: 'in the question',
  label: 'in a label',
  short: 'in a short name',
  role: 'in a role',
  link_to_shop: 'in what ties a hitter to the shop',
  also: 'in a build sheet',
};

const whatByBlock: Readonly<Record<string, string>> = {
  claims: 'in a claim',
  exclusions: 'in the reason of an exclusion',
  corrections: 'in a correction',
  replies: 'in a reply',
  plan: 'in the plan',
  conditions: 'in the conditions',
  interests: 'in what is said of interests',
  held: 'in what was held the same',
  withdrawn: 'in the reason of the withdrawal',
};

const whatOf = (path: Path): string => {
  const [first = ''] = path;
  const known = path.flatMap((step) => (typeof step === 'string' ? (whatByKey[step] ?? []) : [])).at(-1);
  const ofHitter = first === 'hitters' && path.at(-1) === 'expectation' ? 'in what a hitter expected' : null;
  return (
    ofHitter ??
    known ??
    whatByBlock[String(first)] ??
    (path.includes('build') ? 'in a build sheet' : 'in an answer')
  );
};

/** Every text of the answers of a report, those of its build sheets too, as far as pages or downloads show them. */
export function publishedTexts({ typed, front, placeOf }: Source): readonly PublishedText[] {
  const own = (tree: Tree | undefined, above: Path): readonly PublishedText[] =>
    textsIn(tree, above).map(({ path, text }) => ({ place: placeOf(path), text, what: whatOf(path) }));
  const sheets = valueAt(typed, ['sheets']);
  // What came after publication is not among what the report is held to.
  const later: Tree = {
    corrections: front.corrections.map(({ what, was, now }) => ({ what, was, now })),
    replies: front.replies.map(({ from, text }) => ({ from, text })),
    ...(front.withdrawn === null ? {} : { withdrawn: { reason: front.withdrawn.reason } }),
  };
  return [
    ...own(valueAt(typed, ['report']), []),
    ...own(later, []),
    ...(isBlock(sheets) ? Object.entries(sheets) : []).flatMap(([id, sheet]) =>
      textsIn(sheet, []).map(({ path, text }) => ({
        place: { file: `contenders/${id}.yaml` },
        text,
        what: whatOf(path),
      })),
    ),
  ];
}

function textsIn(
  tree: Tree | undefined,
  above: Path,
): readonly { readonly path: Path; readonly text: string }[] {
  if (typeof tree === 'string') return [{ path: above, text: tree }];
  if (Array.isArray(tree)) return tree.flatMap((own: Tree, at) => textsIn(own, [...above, at]));
  if (!isBlock(tree)) return [];
  return Object.entries(tree).flatMap(([key, own]) =>
    notProse.has(key) ? [] : textsIn(own, [...above, key]),
  );
}
