import { visible } from '../problems/visible.ts';
import { ReportsFailed } from './reportsFailed.ts';

/** What failed, in the words of the system, and what to do about it. */
interface Failure {
  readonly what: string;
  readonly toDo: string;
}

/** By the codes of the system (errno of POSIX) and of Node. */
const known: Readonly<Record<string, (place: string) => Failure>> = {
  EACCES: notAllowed,
  EPERM: notAllowed,
  EROFS: (place) => ({
    what: `${place} lies on a disk that can only be read`,
    toDo: 'Name a folder on another disk: CONTENT_DIR, OUT_DIR or CACHE_DIR.',
  }),
  ENOSPC: diskFull,
  EDQUOT: diskFull,
  EMFILE: tooManyOpen,
  ENFILE: tooManyOpen,
  ENOENT: (place) => ({
    what: `${place} is not there`,
    toDo: 'Put it there, or name another place, and start the command again.',
  }),
  ENOTDIR: (place) => ({
    what: `${place} was to be a folder, and it or a part of its path is a file`,
    toDo: 'Name a folder, or give the file another name.',
  }),
  EISDIR: (place) => ({
    what: `${place} was to be a file and is a folder`,
    toDo: 'Move the folder away, or give it another name.',
  }),
  ENAMETOOLONG: (place) => ({
    what: `The name of ${place} is too long for the disk`,
    toDo: 'Use a shorter name.',
  }),
  EIO: (place) => ({
    what: `The disk failed at ${place}`,
    toDo: 'Copy what lies on it to another disk, and work there.',
  }),
  ERR_FS_FILE_TOO_LARGE: tooLarge,
  ERR_STRING_TOO_LONG: tooLarge,
  ERR_WORKER_OUT_OF_MEMORY: () => ({
    what: 'The memory did not suffice',
    toDo: 'Close other programs, or look for a report with far more shots or text than the others.',
  }),
};

/** Told in sentences; the trail, which is for those who keep the code, only where it is asked for. */
export function failureText(error: unknown, { trail }: { readonly trail: boolean }): string {
  const { what, toDo } = failureOf(error);
  const where = trail
    ? `${trailOf(error)}\n`
    : 'DEBUG=1 before the command shows where in the code it happened.\n';
  return `${what.split('\n').map(visible).join('\n')}.\n${toDo}\n${where}`;
}

const missingPackage = /Cannot find (?:package|native binding|module '(?![./])|module '.*node_modules)/;

const portTaken: Failure = {
  what: 'The port cannot be used',
  toDo: 'Name another one from 1024 on, such as --port 4400, or end the program that uses it.',
};

/** For those who keep the code. */
function trailOf(error: unknown): string {
  if (error instanceof ReportsFailed)
    return error.failed.map((of) => `${of.slug}: ${trailOf(of.error)}`).join('\n');
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}

export function failureOf(error: unknown): Failure {
  if (error instanceof ReportsFailed) return ofReports(error.failed);
  const words = error instanceof Error ? firstSentence(error.message) : String(error);
  const code = codeOf(error);
  if (missingPackage.test(words))
    return {
      what: `A package is missing: ${words}`,
      toDo: 'Run npm ci in the folder of the project, then start the command again.',
    };
  const failure = isPort(error) ? portTaken : code === null ? undefined : known[code]?.(placeOf(error));
  if (failure !== undefined) return { ...failure, what: `${failure.what} (${words})` };
  const name = error instanceof Error && error.name !== 'Error' ? `${error.name}: ` : '';
  return {
    what: `Something failed that was not foreseen: ${name}${words}`,
    toDo: 'This is a fault of the program and not of what you wrote: please tell those who keep it.',
  };
}

/** A sentence for each; what to do about the first, as one cause mostly stops them all. */
function ofReports(failed: ReportsFailed['failed']): Failure {
  const failures = failed.map(({ slug, error }) => ({ slug, ...failureOf(error) }));
  return {
    what: failures.map(({ slug, what }) => `${slug} could not be worked out. ${what}`).join('.\n'),
    toDo: failures[0]?.toDo ?? '',
  };
}

function notAllowed(place: string): Failure {
  return {
    what: `This user may not use ${place}`,
    toDo: 'Give the user the right to it, or name another place: CONTENT_DIR, OUT_DIR or CACHE_DIR.',
  };
}

function diskFull(): Failure {
  return {
    what: 'The disk is full',
    toDo: 'Make room on it, then start the command again.',
  };
}

function tooManyOpen(): Failure {
  return {
    what: 'More files are open than the system allows',
    toDo: 'Close other programs, or allow more: ulimit -n 4096 in the same terminal.',
  };
}

function tooLarge(place: string): Failure {
  return {
    what: `${place} is larger than a file of text can be`,
    toDo: 'Take it out of the content, or cut it into smaller files.',
  };
}

/** Of an error that came from a worker only the words are left. */
const codeOf = (error: unknown): string | null =>
  error instanceof Error
    ? 'code' in error && typeof error.code === 'string'
      ? error.code
      : (/^([A-Z][A-Z0-9]+): /.exec(error.message)?.[1] ?? null)
    : null;

/** The file or folder that the system names. */
function placeOf(error: unknown): string {
  if (!(error instanceof Error)) return 'a file';
  const path = 'path' in error ? error.path : undefined;
  const to = 'dest' in error ? error.dest : undefined;
  if (typeof to === 'string') return to;
  return typeof path === 'string' ? path : (/'([^']+)'$/.exec(error.message)?.[1] ?? 'a file');
}

const isPort = (error: unknown): boolean =>
  error instanceof Error && 'syscall' in error && error.syscall === 'listen';

/** Some messages go on with a list of requiring files or a snippet of code. */
const firstSentence = (message: string): string => (message.split('\n')[0] ?? '').replace(/\.$/, '');
