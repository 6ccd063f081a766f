import type { Terminal } from '../terminal.ts';

/** A terminal that keeps what a command says, for a page that shows it. */
export function listeningTerminal(): { readonly terminal: Terminal; readonly said: () => string } {
  let said = '';
  const keep = (text: string): void => {
    said += text;
  };
  return {
    terminal: { write: keep, writeError: keep, colour: false, live: false, width: 80 },
    said: () => said,
  };
}
