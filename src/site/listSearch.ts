/** What is known of a report by those who search: all of it in words, as its row shows it. */
export interface SearchEntry {
  readonly path: string;
  readonly title: string;
  /** Its finding in each system of units; of a withdrawn report that it was withdrawn. */
  readonly finding: Readonly<Record<'yards' | 'metres', string>>;
  /** Golfers, shots and day. */
  readonly facts: string;
  /** Words that find it besides: what was compared, by name, and its kinds. */
  readonly names: string;
}

/** More than these are counted and not shown. */
const mostShown = 50;

const label = 'Search titles, names and findings';

/**
 * For a browser: a field in `place` that finds reports while somebody types, and says how many. The index is asked for
 * once, when the field is first used. What it finds takes the place of the page's own list, `#list`.
 *
 * @param load gets what stands at an address of the site
 */
export function addListSearch(
  page: Document,
  place: HTMLElement,
  load: (address: string) => Promise<unknown>,
): void {
  const own = <Name extends keyof HTMLElementTagNameMap>(
    name: Name,
    more: Partial<HTMLElementTagNameMap[Name]>,
  ): HTMLElementTagNameMap[Name] => Object.assign(page.createElement(name), more);
  const field = own('input', { type: 'search', id: 'search-field', autocomplete: 'off' });
  const words = own('label', { textContent: label });
  words.setAttribute('for', field.id);
  const status = own('p', { className: 'search-count' });
  status.setAttribute('role', 'status');
  const found = own('ol', { className: 'search-found', hidden: true });
  const list = page.getElementById('list');
  place.setAttribute('role', 'search');
  place.append(words, field, status);
  list?.before(found);

  let index: Promise<readonly SearchEntry[]> | null = null;
  const entries = (): Promise<readonly SearchEntry[]> => {
    index ??= load(place.dataset['index'] ?? '').then(readEntries);
    return index;
  };
  const show = (matching: readonly SearchEntry[] | null, said: string): void => {
    if (list !== null) list.hidden = matching !== null;
    found.hidden = matching === null;
    status.textContent = said;
    found.replaceChildren(
      ...(matching ?? []).slice(0, mostShown).map(({ path, title, finding, facts }) => {
        const item = own('li', {});
        const told = own('p', {});
        for (const system of ['yards', 'metres'] as const) {
          const copy = own('span', { textContent: finding[system], hidden: system !== shownUnits(page) });
          if (finding.yards !== finding.metres) copy.dataset['units'] = system;
          else copy.hidden = system !== 'yards';
          told.append(copy);
        }
        item.append(own('a', { href: path, textContent: title }), told, own('p', { textContent: facts }));
        return item;
      }),
    );
  };
  const search = async (): Promise<void> => {
    const asked = field.value;
    if (folded(asked) === '') return show(null, '');
    try {
      const all = await entries();
      // Somebody may have typed on meanwhile.
      if (field.value !== asked) return;
      const matching = matchingEntries(all, asked);
      show(matching, countWords(matching.length, all.length));
    } catch {
      index = null;
      show(null, 'The search could not be loaded; the list and its kinds work without it.');
    }
  };
  field.addEventListener('input', () => void search());
}

/** The entries that hold every word of a query somewhere, in their order; accents and capitals make no difference. */
export function matchingEntries(entries: readonly SearchEntry[], query: string): readonly SearchEntry[] {
  const words = folded(query).split(' ');
  return entries.filter(({ title, finding, names, facts }) => {
    const all = folded([title, names, finding.yards, finding.metres, facts].join(' '));
    return words.every((word) => all.includes(word));
  });
}

function countWords(matching: number, all: number): string {
  if (matching === 0) return `None of ${all} reports matches.`;
  const shown = matching > mostShown ? ` The newest ${mostShown} are shown.` : '';
  return `${matching} of ${all} ${all === 1 ? 'report' : 'reports'} ${matching === 1 ? 'matches' : 'match'}.${shown}`;
}

function folded(text: string): string {
  return text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase().replace(/\s+/g, ' ').trim();
}

/** The units that the page shows now. */
function shownUnits(page: Document): 'yards' | 'metres' {
  const shown = page.querySelector<HTMLElement>('#list [data-units]:not([hidden])');
  return (shown?.dataset['units'] ?? page.getElementById('units')?.dataset['own']) === 'metres'
    ? 'metres'
    : 'yards';
}

/** @throws where the answer is no index */
function readEntries(answer: unknown): readonly SearchEntry[] {
  if (!Array.isArray(answer)) throw new TypeError('The index of the search is no list.');
  return answer;
}
