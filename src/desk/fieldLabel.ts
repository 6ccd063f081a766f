/** What an answer means, as the label of its control: with a capital, and no full stop. */
export const fieldLabel = (meaning: string): string =>
  `${meaning.charAt(0).toUpperCase()}${meaning.slice(1)}`.replace(/[.;:]$/, '');
