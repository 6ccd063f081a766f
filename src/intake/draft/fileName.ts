import { isRealDate } from '../authored/answers.ts';
import { namesPerson, withoutPeople, type PersonName } from '../privacy/hitterNames.ts';
import { shortSlug } from './slugOf.ts';

/** What the name of a session file tells of the report. */
interface FromFileName {
  readonly title: string;
  readonly slug: string;
  /** ISO date, where the name holds one that can be read in one way only. */
  readonly date: string | null;
}

const yearFirst = /(?<!\d)((?:19|20)\d{2})([-_. ]?)(\d{2})\2(\d{2})(?!\d)/;

/**
 * `driver_heads-2026-04-11.csv`: "Driver heads", `driver-heads-2026-04-11`, 2026-04-11. Names of people are left out.
 */
export function fromFileName(name: string, people: readonly PersonName[] = []): FromFileName {
  const typedStem = name.replace(/\.[^.]+$/, '');
  const stem = namesPerson(typedStem, people) ? withoutPeople(typedStem, people) : typedStem;
  const found = yearFirst.exec(stem);
  const typed = found === null ? '' : `${found[1]}-${found[3]}-${found[4]}`;
  const date = isRealDate(typed) ? typed : null;
  const words = (date === null ? stem : stem.replace(yearFirst, ' '))
    .replace(/[_\s-]+|(?<!\d)\.+|\.+(?!\d)/g, ' ')
    .trim();
  return {
    title: words === '' ? 'Session' : words.charAt(0).toUpperCase() + words.slice(1),
    slug: shortSlug(stem) || 'session',
    date,
  };
}
