import type { Command } from '../command.ts';
import { helpText } from '../helpText.ts';

/** `npm run help`; needs no package, so that it helps before any is installed. */
export const command: Command = ({ terminal }) => {
  terminal.write(helpText());
  return 0;
};
