import type { Terminal } from './terminal.ts';

/** A port as typed; null where none was, undefined (which is then said) where it is none. */
export function readPort(typed: string | undefined, terminal: Terminal): number | null | undefined {
  if (typed === undefined) return null;
  const port = Number(typed);
  if (/^\d{1,5}$/.test(typed) && port < 65_536) return port;
  terminal.writeError(`--port ${typed}: a port is a whole number below 65536, such as 4321.\n`);
  return undefined;
}
