import { visible } from '../../problems/visible.ts';
import { systemWords } from '../../problems/systemWords.ts';
import { ContentLocked } from './contentLock.ts';

/**
 * Why nothing was written in a content folder, a whole sentence.
 *
 * @throws errors that are no fault of the disk as they are
 */
export function notWritten(contentDir: string, error: unknown): string {
  if (error instanceof ContentLocked) return visible(error.message);
  return visible(`Nothing can be written in ${contentDir}: ${systemWords(error)}.`);
}
