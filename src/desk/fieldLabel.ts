import { capitalised } from '../prose/words.ts';
/** A clause of the reference as it stands alone on a form: with a capital, and no stop at its end. */
export const fieldLabel = (meaning: string): string => capitalised(meaning).replace(/[.;:]$/, '');
