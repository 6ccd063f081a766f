import type { Context } from 'hono';
import type { DroppedFile } from './deskWork.ts';
import type { Submitted } from './submittedAnswers.ts';

/** A form as it came in: its texts and its files. */
export interface ReadForm {
  readonly texts: Submitted;
  readonly files: readonly DroppedFile[];
}

/**
 * Reads what a form sent; a control of files in which none was chosen sends an empty one without a name. Null where it
 * cannot be read, as when half of it came.
 */
export async function readForm(context: Context): Promise<ReadForm | null> {
  // What fails here is no fault of the form: it was too much, or the browser is gone.
  await context.req.arrayBuffer();
  const body = await context.req.parseBody({ all: true }).catch(() => null);
  if (body === null) return null;
  const texts: Record<string, readonly string[]> = {};
  const files: DroppedFile[] = [];
  for (const [name, sent] of Object.entries(body)) {
    const values = Array.isArray(sent) ? sent : [sent];
    // `__proto__` as a name must stay a name.
    Object.defineProperty(texts, name, {
      value: values.filter((value) => typeof value === 'string'),
      enumerable: true,
    });
    for (const value of values) {
      if (typeof value === 'string' || value.name === '') continue;
      files.push({ name: value.name, bytes: new Uint8Array(await value.arrayBuffer()) });
    }
  }
  return { texts, files };
}
