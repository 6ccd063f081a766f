import { helpText } from './helpText.ts';
import { processTerminal } from './terminal.ts';

processTerminal().write(helpText());
