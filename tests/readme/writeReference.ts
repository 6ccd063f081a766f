import { readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { withReference } from './reference.ts';

/** `npm run reference`: writes the reference into `content/README.md` anew. */
const file = resolve(import.meta.dirname, '../../content/README.md');
const readme = withReference(readFileSync(file, 'utf8'));
if (readme === null) {
  process.stderr.write('content/README.md has lost the two lines between which the reference stands.\n');
  process.exitCode = 1;
} else {
  writeFileSync(file, readme);
}
