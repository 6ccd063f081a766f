/** What a browser must know of every page before all else: its letters, that it fits a phone, that it has both themes. */
export const pageBasics =
  '<meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><meta name="color-scheme" content="light dark">';
