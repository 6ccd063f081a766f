import type { DecodedFile } from '../../intake/authored/decodeText.ts';
import { readYaml } from '../../intake/authored/yamlText.ts';
import { editAnswers, editReport, type EditedText } from '../../intake/edits/editAnswers.ts';
import { reportParts } from '../../intake/edits/reportParts.ts';
import type { AuthoredKind, Migration } from './migrations.ts';

/** A file that a shop wrote. */
export interface AuthoredText {
  /** From the content folder. */
  readonly path: string;
  readonly kind: AuthoredKind;
  readonly text: string;
  /** What it is saved as; whatever is written is UTF-8. */
  readonly encoding: DecodedFile['encoding'];
}

/** A file that cannot be brought along, and why: a sentence. */
export interface Unmigrated {
  readonly path: string;
  readonly why: string;
}

/** The files that change, or all that stand in the way. */
type Migrated =
  | { readonly kind: 'migrated'; readonly changed: readonly AuthoredText[] }
  | { readonly kind: 'refused'; readonly refused: readonly Unmigrated[] };

/** Takes files through migrations, one version after another; whatever these do not edit stays byte for byte. */
export function migrateTexts(texts: readonly AuthoredText[], steps: readonly Migration[]): Migrated {
  const changed: AuthoredText[] = [];
  const refused: Unmigrated[] = [];
  for (const file of texts) {
    const edited = steps.reduce<EditedText>(
      (before, step) => ('refused' in before ? before : migrateOnce({ ...file, text: before.text }, step)),
      { text: file.text },
    );
    if ('refused' in edited) refused.push({ path: file.path, why: edited.refused });
    else if (edited.text !== file.text) changed.push({ ...file, text: edited.text });
  }
  return refused.length > 0 ? { kind: 'refused', refused } : { kind: 'migrated', changed };
}

function migrateOnce({ path, kind, text }: AuthoredText, { from, edits }: Migration): EditedText {
  const own = kind === 'report' ? (reportParts(text)?.answers ?? null) : text;
  const { tree } = own === null ? { tree: null } : readYaml(path, own);
  if (tree === null)
    return { refused: 'Its answers cannot be read as they stand. Mend what npm run check reports first.' };
  const wanted = edits(kind, tree);
  if (kind === 'report') return editReport(text, wanted);
  return editAnswers(
    text,
    kind === 'shop' ? [...wanted, { path: ['schema'], to: String(from + 1) }] : wanted,
  );
}
