import type { Licence } from '../intake/authored/licence.ts';

/** A licence as one text: its short id, or the address of its text. */
export function licenceText(licence: Licence): string {
  return 'id' in licence ? licence.id : licence.address;
}

/** A licence as `datapackage.json` names it. */
export function licenceEntry(licence: Licence): { readonly name: string } | { readonly path: string } {
  return 'id' in licence ? { name: licence.id } : { path: licence.address };
}

/** Where the text of a licence stands; short ids are those of the SPDX list. */
export function licenceAddress(licence: Licence): string {
  return 'id' in licence ? `https://spdx.org/licenses/${licence.id}` : licence.address;
}
