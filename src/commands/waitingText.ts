import { likePerson } from '../intake/privacy/hitterNames.ts';
import { visible } from '../problems/visible.ts';

/**
 * What waits in the inbox, and what to do with it; empty where nothing does. What is printed may be public, so a file
 * that is named like a person is counted and not named.
 */
export function waitingText(waiting: readonly string[]): string {
  if (waiting.length === 0) return '';
  const plain = waiting.filter((name) => likePerson(name, []) === null);
  const alike = waiting.length - plain.length;
  const files = alike === 1 ? 'a file' : `${alike} files`;
  const names = [...plain.map(visible), ...(alike === 0 ? [] : [`${files} named like a person`])];
  const leftOut =
    alike === 0 ? '' : ' What looks like the name of a person is left out of the names that they get there.';
  return `Waiting in inbox/: ${names.join(', ')}. "npm run draft" makes draft reports of them.${leftOut}\n`;
}
