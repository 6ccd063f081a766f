import { largestFile } from '../intake/shots/decodeFile.ts';

/** The largest file that is read, and what to do with a larger one. */
interface SizeLimit {
  /** Bytes. */
  readonly most: number;
  readonly cure: string;
}

const million = 1_000_000;

/** Far more than anybody writes; looked at before a file is read, since a larger one may not fit into memory. */
const limits: readonly (SizeLimit & { readonly names: RegExp })[] = [
  {
    names: /\.ya?ml$/i,
    most: 2 * million,
    cure: 'Take out what is no answer; notes go into a file of their own.',
  },
  { names: /\.md$/i, most: 5 * million, cure: 'Take out what is no text, such as pictures pasted into it.' },
  {
    names: /(?:^|\/)ledger\.json$/,
    most: 50 * million,
    cure: 'Nobody edits this file by hand: take back its last good version.',
  },
];

const session: SizeLimit = { most: largestFile, cure: 'Split the session over several files.' };

/** The limit for a file of a content folder, by its name. */
export function sizeLimit(path: string): SizeLimit {
  return limits.find(({ names }) => names.test(path)) ?? session;
}
