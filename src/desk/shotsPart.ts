import type { ReportPart } from './reportPart.ts';
import { shotChange } from './shotChange.ts';
import { shotsPage } from './shotsPage.ts';

/** Every shot of a report, which of them are left out, by which rule and why. */
export const shotsPart: ReportPart = {
  id: 'shots',
  heading: 'Shots',
  besideLivePage: false,
  done: {
    'left-out': 'Left out. What that does to the answer stands below, where it can be told.',
    'taken-back': 'Taken back in: it counts again.',
    limit: 'The limit is set.',
    changed: 'The change is saved.',
    unchanged: 'Nothing was changed.',
    none: 'Saved: none was left out.',
  },
  page: shotsPage,
  change: shotChange,
};
