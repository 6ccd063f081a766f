import { yamlScalar } from '../draft/yamlScalar.ts';
import { isList, type Answer } from './answerEdit.ts';

/** An answer as YAML on one line, as it stands in brackets too. */
export function onOneLine(answer: Answer): string {
  if (typeof answer === 'string') return answer === '' ? "''" : yamlScalar(answer);
  if (isList(answer)) return `[${answer.map(onOneLine).join(', ')}]`;
  return `{${Object.entries(answer)
    .map(([key, value]) => `${yamlScalar(key)}: ${onOneLine(value)}`)
    .join(', ')}}`;
}

/**
 * What stands behind a key's colon: on the same line, or for answers under keys and lists of such on lines of their own,
 * each beginning with `newline` and the blanks of their depth.
 *
 * @param blanks how far the key itself is indented
 */
export function behindColon(answer: Answer, blanks: string, newline: string): string {
  if (answer === '') return '';
  if (typeof answer === 'string') return ` ${onOneLine(answer)}`;
  const inner = `${blanks}  `;
  if (isList(answer)) {
    if (answer.every((entry) => typeof entry === 'string')) return ` ${onOneLine(answer)}`;
    return answer.map((entry) => `${newline}${inner}- ${onOneLine(entry)}`).join('');
  }
  const entries = Object.entries(answer);
  if (entries.length === 0) return ' {}';
  return entries
    .map(([key, value]) => `${newline}${inner}${yamlScalar(key)}:${behindColon(value, inner, newline)}`)
    .join('');
}
