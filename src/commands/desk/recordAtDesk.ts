import type { OnRecord } from '../../desk/deskWork.ts';
import { recordLedger } from '../recordLedger.ts';
import { listeningTerminal } from './listeningTerminal.ts';

interface RecordAtDesk {
  readonly contentDir: string;
  /** The built site, from which the versions are kept. */
  readonly outDir: string;
  /** The day, ISO 8601, and the hour and minute where the shop is. */
  readonly today: string;
  readonly time: string;
}

/** Puts on record what is planned and published, by the code of `npm run record`. */
export function recordAtDesk(request: RecordAtDesk): OnRecord {
  const { terminal, said } = listeningTerminal();
  const recorded = recordLedger({ ...request, terminal });
  return { recorded, said: said() };
}
