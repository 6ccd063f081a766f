import type { Licence } from '../intake/authored/licence.ts';

/** A licence as one text: its short id, or the address of its text. */
export function licenceText(licence: Licence): string {
  return 'id' in licence ? licence.id : licence.address;
}

/** A licence as `datapackage.json` names it: by its short id where it has one, and where its text stands. */
export interface LicenceEntry {
  readonly name?: string;
  readonly path: string;
  readonly title?: string;
}

export function licenceEntry(licence: Licence): LicenceEntry {
  const path = licenceAddress(licence);
  return 'id' in licence ? { name: licence.id, path } : { path };
}

/** Where the text of a licence stands; short ids are those of the SPDX list. */
export function licenceAddress(licence: Licence): string {
  return 'id' in licence ? `https://spdx.org/licenses/${licence.id}` : licence.address;
}
