import { runCommand } from './runCommand.ts';

await runCommand(() => import('./cli/migrate.ts'));
