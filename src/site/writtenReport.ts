import { assembleSession } from '../intake/assembleSession.ts';
import { nameInFile } from '../intake/placedRows.ts';
import type { Shared } from '../intake/authored/shared.ts';
import { canBeAddress } from '../intake/authored/reportName.ts';
import { defineSource, type Source } from '../intake/authored/source.ts';
import { contenderMatcher, foldedName } from '../intake/contenderNames.ts';
import { withoutMisreadCells } from '../intake/leftOutReadings.ts';
import { looseAnswers } from '../intake/draft/looseAnswers.ts';
import { looseShots, type TypedReport } from '../intake/draft/looseShots.ts';
import { isUnfinished } from '../intake/draft/openAnswers.ts';
import { slugOf } from '../intake/draft/slugOf.ts';
import { joinOrderSheet } from '../intake/plan/joinOrderSheet.ts';
import { readOrderSheet } from '../intake/plan/readOrderSheet.ts';
import { namedHitters } from '../intake/privacy/namedHitters.ts';
import { privacyProblems } from '../intake/privacy/privacyProblems.ts';
import { readShotFile } from '../intake/shots/readShotFile.ts';
import type { ShotFile } from '../intake/shots/shotFile.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import { picturesNamed } from '../prose/narrativePictures.ts';
import { sha256, type ContentFolder, type FileRead } from './contentFiles.ts';
import { readVersions } from './keptVersions.ts';
import { sessionFileMissing } from './sessionFileMissing.ts';
import { readPictures } from './readPictures.ts';

/** One report as written and recorded, before anything is worked out; `source` is null when it cannot be read. */
export interface WrittenReport {
  readonly slug: string;
  readonly file: string;
  readonly source: Source | null;
  readonly shotFiles: readonly ShotFile[];
  /** A draft with answers still to be given. */
  readonly unfinished: boolean;
  readonly problems: readonly Problem[];
}

/** What editors and systems make of the name. */
const likeReport = /^reports?(?:[ _-]?\(?\d\)?)?\.(?:md|markdown|mdown|txt|md\.txt|md\.md)$/i;

/** Reads one report of a content folder. */
export function readWritten(folder: ContentFolder, slug: string, shared: Shared): WrittenReport {
  const file = `reports/${slug}/report.md`;
  if (!canBeAddress.test(slug)) {
    const problem = makeProblem(
      'folder-name',
      { file: `reports/${slug}` },
      {
        expected:
          'letters, digits, hyphens, underscores and dots, no dot at the end, and not index.html: the name becomes part of an address',
        found: slug,
        cure: `Rename the folder, for example to ${slugOf(slug) || 'three-heads-one-shaft'}.`,
      },
    );
    return { slug, file, source: null, shotFiles: [], unfinished: false, problems: [problem] };
  }
  const { content: text, problems: ofText } = folder.text(file);
  if (text === null && ofText.length > 0)
    return { slug, file, source: null, shotFiles: [], unfinished: false, problems: ofText };
  if (text === null) {
    const other = folder.files(`reports/${slug}`).find((name) => likeReport.test(name));
    const problem = makeProblem(
      'report-missing',
      { file },
      {
        expected: 'a file report.md in every folder of reports/',
        found: other ?? null,
        cure:
          other === undefined
            ? 'Write report.md, or move the folder out of reports/.'
            : `Rename ${other} to report.md, in small letters and with nothing behind .md.`,
      },
    );
    return { slug, file, source: null, shotFiles: [], unfinished: false, problems: [problem] };
  }
  const first = defineSource({ slug, file, text, files: [], ...shared });
  const { source } = first;
  if (source === null) {
    // What is wrong with the session is shown in the same go as what is wrong with the report.
    const { hitters, orderSheet, contenderNames } = looseAnswers(file, text);
    const loose = readLooseSession(folder, slug, text);
    const ofSession = withoutMisreadCells(loose, () =>
      looseShots({ file, text, shared }, withLooseSheet(loose, { folder, slug, text, shared })).shots.map(
        ({ shot }) => shot,
      ),
    ).flatMap(({ problems }) => problems);
    const beside = csvBeside(folder, slug);
    const known = new Set(contenderNames.map(foldedName));
    const isContender = (name: string): boolean => orderSheet !== null || known.has(foldedName(name));
    const problems = [
      ...ofText,
      ...first.problems,
      ...ofSession.filter((problem) => !isAnswered(problem, hitters, isContender)),
      ...beside.flatMap(({ problems }) => problems),
      ...privacyProblems(
        file,
        text,
        beside.flatMap((csv) => (csv.content === null ? [] : [{ file: csv.file, bytes: csv.content }])),
      ),
    ];
    const unfinished = isUnfinished(file, text, shared);
    return { slug, file, source, shotFiles: [], unfinished, problems };
  }
  const read = source.front.session.map((name) => ({ name, ...folder.bytes(`reports/${slug}/${name}`) }));
  const absent = read.flatMap(({ name, content, problems }, index) =>
    content === null && problems.length === 0 ? [sessionFileMissing(name, index, folder, source)] : problems,
  );
  const files = read.flatMap(({ name, content }) => (content === null ? [] : [{ name, bytes: content }]));
  const shotFiles = files.map(({ name, bytes }) =>
    readShotFile(`reports/${slug}/${name}`, bytes, {
      columns: source.front.columns,
      varied: source.front.varied,
    }),
  );
  const sheeted = withOrderSheet(folder, source, shotFiles);
  const joined = {
    ...sheeted,
    shotFiles: withoutMisreadCells(sheeted.shotFiles, (read) => assembleSession(source, read).session.shots),
  };
  const contenderOf = contenderMatcher(source.front.contenders);
  const versions = readVersions(folder, slug, source.front, source.placeOf);
  return {
    slug,
    file,
    source: {
      ...source,
      files: [...files, ...joined.sheet].map(({ name, bytes }) => ({ name, sha256: sha256(bytes) })),
      pictures: readPictures(folder, slug, picturesNamed(source.body.text)),
      versions: versions.days,
    },
    shotFiles: joined.shotFiles,
    unfinished: false,
    problems: [
      ...ofText,
      ...first.problems,
      ...absent,
      ...joined.problems,
      ...versions.problems,
      ...namedHitters(source, joined.shotFiles),
      ...privacyProblems(
        file,
        text,
        [...files, ...joined.sheet].map(({ name, bytes }) => ({ file: `reports/${slug}/${name}`, bytes })),
      ),
      ...joined.shotFiles
        .flatMap(({ problems }) => problems)
        .filter(
          (problem) =>
            // The report states the day.
            problem.kind !== 'date-ambiguous' &&
            !isAnswered(problem, source.front.hitters.length, (name) => contenderOf(name) !== null),
        ),
    ],
  };
}

interface WithSheet {
  readonly shotFiles: readonly ShotFile[];
  /** The order sheet itself, where there is one. */
  readonly sheet: readonly { readonly name: string; readonly bytes: Uint8Array }[];
  readonly problems: readonly Problem[];
}

/** The shots with what the order sheet says of them, where the report names one. */
function withOrderSheet(folder: ContentFolder, source: Source, shotFiles: readonly ShotFile[]): WithSheet {
  const { front, slug, placeOf } = source;
  const name = front.orderSheet;
  if (name === null) return { shotFiles, sheet: [], problems: [] };
  const { content: bytes, problems } = folder.bytes(`reports/${slug}/${name}`);
  if (bytes === null && problems.length > 0) return { shotFiles, sheet: [], problems };
  if (bytes === null) {
    const problem = makeProblem('order-sheet-missing', placeOf(['order_sheet']), {
      expected: `a file ${name} beside report.md`,
      found: null,
      cure: 'Copy the order sheet into the folder of the report, or take the line out if the session file names what was hit.',
    });
    return { shotFiles, sheet: [], problems: [problem] };
  }
  const sheet = readOrderSheet(`reports/${slug}/${name}`, bytes);
  const contenderOf = contenderMatcher(front.contenders);
  const joined = joinOrderSheet(shotFiles, sheet, contenderOf, front.rowsInHitOrder);
  return { ...joined, sheet: [{ name, bytes }] };
}

/** The session files of a report whose answers are not complete; all CSV files beside it where it names none. */
export function readLooseSession(folder: ContentFolder, slug: string, text: string): readonly ShotFile[] {
  const { session, orderSheet, options } = looseAnswers(`reports/${slug}/report.md`, text);
  const beside = folder
    .files(`reports/${slug}`)
    .filter((name) => /\.csv$/i.test(name) && name !== orderSheet);
  return (session.length > 0 ? session : beside).flatMap((name) => {
    const path = `reports/${slug}/${name}`;
    const { content } = folder.bytes(path);
    return content === null ? [] : [readShotFile(path, content, options)];
  });
}

interface LooseReport extends Omit<TypedReport, 'file'> {
  readonly folder: ContentFolder;
  readonly slug: string;
}

/** Such files with what the order sheet of the report says of them, where it names one that can be used. */
export function withLooseSheet(
  files: readonly ShotFile[],
  { folder, slug, text, shared }: LooseReport,
): readonly ShotFile[] {
  const file = `reports/${slug}/report.md`;
  const { orderSheet, rowsInHitOrder } = looseAnswers(file, text);
  const path = `reports/${slug}/${orderSheet ?? ''}`;
  const { content: bytes } = orderSheet === null ? { content: null } : folder.bytes(path);
  if (bytes === null) return files;
  const contenderOf = contenderMatcher(looseShots({ file, text, shared }, []).contenders);
  return joinOrderSheet(files, readOrderSheet(path, bytes), contenderOf, rowsInHitOrder).shotFiles;
}

function csvBeside(folder: ContentFolder, slug: string): (FileRead<Uint8Array> & { file: string })[] {
  return folder
    .files(`reports/${slug}`)
    .filter((name) => /\.csv$/i.test(name))
    .map((name) => ({ file: `reports/${slug}/${name}`, ...folder.bytes(`reports/${slug}/${name}`) }));
}

/**
 * Whether a report has answered what the reader of its file alone must ask: it lists its hitters, or knows what was
 * hit in a file that does not say so.
 *
 * @param isContender whether the report has a contender of that name
 */
function isAnswered(
  { kind, file }: Problem,
  hitters: number,
  isContender: (name: string) => boolean,
): boolean {
  if (kind === 'multiple-hitters') return hitters > 1;
  return kind === 'club-column-missing' && isContender(nameInFile(file));
}
