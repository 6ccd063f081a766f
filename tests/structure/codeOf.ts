import { readFileSync } from 'node:fs';

/** The TypeScript of a file: all of it, or the head and the scripts of an Astro component. */
export function codeOf(file: string): readonly string[] {
  const text = readFileSync(file, 'utf8');
  if (!file.endsWith('.astro')) return [text];
  const head = /^---\n(.*?)\n---/s.exec(text)?.[1] ?? '';
  const scripts = [...text.matchAll(/<script[^>]*>(.*?)<\/script>/gs)].map(([, script = '']) => script);
  return [head, ...scripts];
}
