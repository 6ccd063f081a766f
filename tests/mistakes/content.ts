import { shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';

/** A content folder by path. */
export type Files = Readonly<Record<string, string | Uint8Array>>;

export const report = 'reports/heads/report.md';
export const session = 'reports/heads/shots.csv';

/** Two invented heads with nothing wrong. */
export const base: Files = { 'shop.yaml': shop, [report]: twoHeads(), [session]: twoHeadsCsv };

export const without = (path: string): Files =>
  Object.fromEntries(Object.entries(base).filter(([own]) => own !== path));

/** The report changed as text. */
export const edited = (change: (text: string) => string): Files => {
  const text = change(twoHeads());
  if (text === twoHeads()) throw new Error('the mistake changes nothing');
  return { ...base, [report]: text };
};

/** One answer of the front matter in other words. */
export const answered = (key: string, line: string): Files =>
  edited((text) => text.replace(new RegExp(`^${key}:.*$`, 'm'), () => line));

/** One answer more. */
export const added = (line: string): Files =>
  edited((text) => text.replace(/^status:/m, () => `${line}\nstatus:`));

/** A paragraph more. */
export const narrated = (paragraph: string): Files => edited((text) => `${text}\n${paragraph}\n`);

/** The session changed as text. */
export const recorded = (change: (csv: string) => string): Files => ({
  ...base,
  [session]: change(twoHeadsCsv),
});

export const shopped = (lines: string): Files => ({ ...base, 'shop.yaml': `${shop}${lines}\n` });

/** The answers about money moved into `shop.yaml`, for two reports. */
export const sharedInterests = (lines: string): Files => {
  const text = twoHeads().replace(/^interests:.*\n/m, '');
  return {
    'shop.yaml': `${shop}interests: {paid_by: the shop, commission_or_gifts: none, seen_before: nobody outside the shop}\n${lines}\n`,
    [report]: text,
    [session]: twoHeadsCsv,
    'reports/second/report.md': text.replace('Two heads', 'Two more'),
    'reports/second/shots.csv': twoHeadsCsv.replace('231.2', '231.4'),
  };
};

export const utf16 = (text: string): Uint8Array =>
  new Uint8Array([0xff, 0xfe, ...Buffer.from(text, 'utf16le')]);
export const windows1252 = (text: string): Uint8Array => new Uint8Array(Buffer.from(text, 'latin1'));
export const zip = new Uint8Array([0x50, 0x4b, 3, 4, 20, 0, 6, 0]);
export const jpeg = new Uint8Array([0xff, 0xd8, 0xff, 0xe0]);
