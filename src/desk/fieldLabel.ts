/** A clause of the reference as it stands alone on a form: with a capital, and no stop at its end. */
export const fieldLabel = (meaning: string): string =>
  `${meaning.charAt(0).toUpperCase()}${meaning.slice(1)}`.replace(/[.;:]$/, '');
