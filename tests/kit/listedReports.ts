import { contentFolder } from '../commands/contentFolder.ts';
import { normal, uniform } from '../demo/random.ts';

/** What the test of one invented report was of. */
interface Subject {
  readonly varied: string;
  readonly club: string;
  /** The family of the club, as its list is called. */
  readonly family: string;
  /** What was compared, as its list is called. */
  readonly nouns: string;
}

const subjects: readonly Subject[] = [
  { varied: 'head', club: 'driver', family: 'drivers', nouns: 'heads' },
  { varied: 'shaft', club: 'driver', family: 'drivers', nouns: 'shafts' },
  { varied: 'ball', club: '7-iron', family: 'irons', nouns: 'balls' },
  { varied: 'head', club: 'fairway wood', family: 'fairway-woods', nouns: 'heads' },
  { varied: 'club', club: '4-hybrid', family: 'hybrids', nouns: 'clubs' },
  { varied: 'grooves', club: 'wedge', family: 'wedges', nouns: 'grooves' },
];

const trees = [
  'Alder',
  'Birch',
  'Cedar',
  'Dogwood',
  'Elder',
  'Fir',
  'Gorse',
  'Hazel',
  'Ivy',
  'Juniper',
  'Larch',
];

/** One of the reports, with what lists should know of it. */
export interface Listed extends Subject {
  readonly slug: string;
  readonly title: string;
  readonly date: string;
  readonly names: readonly string[];
}

/** Every shot is invented; nothing here was measured. Days go up and down, so that no order comes by itself. */
export function listed(count: number): readonly Listed[] {
  return Array.from({ length: count }, (_, index) => {
    const subject = subjects[index % subjects.length];
    if (subject === undefined) throw new Error('no subject');
    const day = new Date(Date.UTC(2020, 0, 1 + ((index * 97) % count) * 3)).toISOString().slice(0, 10);
    const names = [0, 1, 2].slice(0, 2 + (index % 2)).map((at) => {
      const tree = trees[(index * 3 + at) % trees.length] ?? '';
      return `${tree} ${index + 1}`;
    });
    return {
      ...subject,
      slug: `report-${index + 1}`,
      title: `${names.length} ${subject.nouns} of a ${subject.club}, number ${index + 1}`,
      date: day,
      names,
    };
  });
}

function files(one: Listed): Readonly<Record<string, string>> {
  const { slug, title, date, varied, club, names } = one;
  const random = normal(uniform(slug.length * 1000 + Number(slug.replace(/\D/g, ''))));
  const rounds = 6;
  const rows = Array.from({ length: rounds * names.length }, (_, index) => {
    const at = index % names.length;
    return `${index + 1},${names[at] ?? ''},${(180 + at * 9 + random() * 6).toFixed(1)}`;
  });
  const contenders = names.map(
    (label, at) => `  c${at + 1}: {label: ${label}, supplied_by: our stock, sold_here: new}`,
  );
  const front = [
    '---',
    `title: ${title}`,
    `date: ${date}`,
    `question: Does one of these carry farther with a ${club}?`,
    `varied: ${varied}`,
    `held: {head: one ${club}}`,
    'contenders:',
    ...contenders,
    'primary: carry',
    'matters: {carry: 5 yd}',
    'session: shots.csv',
    'hitters: {one: {role: staff fitter, hand: right, consent: yes}}',
    'interests: {paid_by: the shop, commission_or_gifts: none, seen_before: nobody outside the shop}',
    'invented_data: yes',
    'status: published',
    '---',
    '',
  ];
  return {
    [`reports/${slug}/report.md`]: front.join('\n'),
    [`reports/${slug}/shots.csv`]: ['Shot,Contender,Carry (yd)', ...rows, ''].join('\n'),
  };
}

/** A content folder of so many reports. */
export function listedContent(count: number): string {
  return contentFolder({
    'shop.yaml': 'name: Example Golf Workshop\naddress: https://golf.example/\n',
    ...Object.assign({}, ...listed(count).map(files)),
  });
}
