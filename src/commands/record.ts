import { parseArgs } from 'node:util';
import { contentFolder } from '../site/folders.ts';
import { localDate } from './localDate.ts';
import { recordLedger } from './recordLedger.ts';
import { processTerminal } from './terminal.ts';

/** Puts plans and published reports on record: `npm run record [-- --drop SLUG --reason "..."]`. */
const { values } = parseArgs({ options: { drop: { type: 'string' }, reason: { type: 'string' } } });
const terminal = processTerminal();
const { drop: slug, reason = '' } = values;
if ((slug === undefined) !== (reason.trim() === '')) {
  terminal.writeError(
    'A planned test is dropped with its reason: npm run record -- --drop NAME --reason "why".\n',
  );
  process.exitCode = 1;
} else {
  const recorded = recordLedger({
    contentDir: contentFolder(),
    today: localDate(new Date()),
    terminal,
    ...(slug === undefined ? {} : { drop: { slug, reason: reason.trim() } }),
  });
  process.exitCode = recorded ? 0 : 1;
}
