import { z } from 'zod';
import { findingsSchema } from '../findings/findings.ts';

/** The shape of `findings.json` as a JSON Schema (draft 2020-12), for those who read the file with other tools. */
export function findingsJsonSchema(): string {
  return `${JSON.stringify(z.toJSONSchema(findingsSchema), null, 1)}\n`;
}
