import { withoutUnseen } from '../authored/unseenCharacters.ts';
import { visible, visibleJson } from '../../problems/visible.ts';

const needsNoQuotes = /^[\p{L}\p{N}](?:[\p{L}\p{N} ._°()+/-]*[\p{L}\p{N}°)])?$/u;

/**
 * Text as a YAML value on one line that is read back as it was, but for characters that a report may not hold; quoted
 * only where it must be.
 */
export function yamlScalar(typed: string): string {
  const text = withoutUnseen(typed);
  if (needsNoQuotes.test(text)) return text;
  // Only double quotes can hold what cannot be seen; their escapes are those of JSON.
  if (visible(text) !== text) return visibleJson(JSON.stringify(text));
  return `'${text.replaceAll("'", "''")}'`;
}

/** A YAML list on one line. */
export function yamlList(texts: readonly string[]): string {
  return `[${texts.map(yamlScalar).join(', ')}]`;
}
