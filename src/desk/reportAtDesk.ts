import { narrativeCharts } from '../charts/narrativeCharts.ts';
import { splitReport, type Body } from '../intake/authored/frontMatter.ts';
import type { TypedReport } from '../intake/draft/looseShots.ts';
import type { Block } from '../intake/authored/tree.ts';
import { readYaml } from '../intake/authored/yamlText.ts';
import { editReport } from '../intake/edits/editAnswers.ts';
import { withNarrative } from '../intake/edits/reportParts.ts';
import type { Ledger, ReportRecord } from '../intake/ledger.ts';
import type { ShotFile } from '../intake/shots/shotFile.ts';
import { openAnswers } from '../intake/draft/openAnswers.ts';
import { understand, type Understood } from '../intake/draft/understood.ts';
import type { Problem } from '../problems/problem.ts';
import type { NarrativeCharts } from '../prose/narrativeValues.ts';
import type { Telling } from '../prose/telling.ts';
import { composedNames } from '../site/composedNames.ts';
import { openContentFolder, sha256, type ContentFolder } from '../site/contentFiles.ts';
import { examineReport, type Examined } from '../site/examineReport.ts';
import { ledgerOf } from '../site/ledger.ts';
import { recordsOf } from '../site/ownLedger.ts';
import { readShared } from '../site/sharedFiles.ts';
import { readLooseSession, readWritten, withLooseSheet } from '../site/writtenReport.ts';
import { unansweredProblems } from './unansweredProblems.ts';
import { otherReports, type OtherReport } from './otherReports.ts';
import { problemsBesideOthers } from './problemsBesideOthers.ts';

/** A report as it lies on the desk: its file, what it says, and all that is wrong with it. */
export interface ReportAtDesk extends TypedReport {
  readonly slug: string;
  /** SHA-256 of the file's bytes. */
  readonly hash: string;
  /** The answers as typed; null where they cannot be read. */
  readonly tree: Block | null;
  readonly body: Body;
  /** Names of the files that lie beside it. */
  readonly files: readonly string[];
  /** Warnings that it has answered as read are not among them. */
  readonly problems: readonly Problem[];
  /** The dotted keys of the answers that must be given and are not. */
  readonly missing: ReadonlySet<string>;
  readonly understood: Understood;
  /** The session files as they were read, with what the order sheet says of them. */
  readonly shotFiles: readonly ShotFile[];
  /** What can be told of the shots; null while something stands in the way. */
  readonly telling: Telling | null;
  readonly charts: NarrativeCharts;
  /** As it was last put on record; null where it never was, or cannot be read. */
  readonly record: ReportRecord | null;
  /** The other reports of the content folder. */
  readonly others: () => readonly OtherReport[];
  /** The same report as it would be with another text in its file. */
  readonly withText: (text: string) => ReportAtDesk | null;
}

/**
 * Reads a report; null where there is none of that name.
 *
 * @param text what is read in place of its file, as before it is written
 */
export function reportAtDesk(root: string, slug: string, text: string | null = null): ReportAtDesk | null {
  const onDisk = composedNames(openContentFolder(root));
  if (!onDisk.folders('reports').includes(slug)) return null;
  const file = `reports/${slug}/report.md`;
  const { content: bytes } = onDisk.bytes(file);
  if (bytes === null) return null;
  const folder = text === null ? onDisk : withText(onDisk, file, text);
  const { shared } = readShared(folder);
  const written = readWritten(folder, slug, shared);
  const { ledger } = ledgerOf(folder);
  const { examined, problems: own } = examineReport(written, ledger);
  const others = (): readonly OtherReport[] => otherReports(folder, slug, shared);
  const sources = written.source === null ? [] : [written.source];
  const problems = [...own, ...sources.flatMap((source) => problemsBesideOthers(source, others))];
  const read = folder.text(file).content ?? '';
  const { yaml, body } = splitReport(file, read);
  const tree = yaml === null ? null : readYaml(file, yaml).tree;
  const toldBy = examined ?? withoutWords(folder, { slug, file, text: read, shared }, ledger);
  const shotFiles = withLooseSheet(readLooseSession(folder, slug, read), {
    folder,
    slug,
    text: read,
    shared,
  });
  return {
    slug,
    file,
    text: read,
    hash: sha256(bytes),
    tree,
    body,
    shared,
    files: folder.files(`reports/${slug}`).filter((name) => name !== 'report.md'),
    problems: unansweredProblems(problems, { slug, tree }),
    missing: new Set(
      openAnswers(file, read, shared)
        .filter(({ must }) => must)
        .map(({ key }) => key),
    ),
    understood: understand(shotFiles),
    shotFiles,
    telling: toldBy?.telling ?? null,
    charts: toldBy === null ? {} : narrativeCharts(toldBy.findings),
    record: sources.flatMap((source) => recordsOf(source, ledger)).at(-1) ?? null,
    others,
    withText: (other) => reportAtDesk(root, slug, other),
  };
}

/** What the shots of a report say while a fault in its narrative or its claims keeps it from being shown. */
function withoutWords(
  folder: ContentFolder,
  { slug, file, text, shared }: Pick<ReportAtDesk, 'slug' | 'file' | 'text' | 'shared'>,
  ledger: Ledger | null,
): Examined | null {
  const unclaimed = editReport(text, [{ path: ['claims'], to: null }]);
  const bare = withNarrative('text' in unclaimed ? unclaimed.text : text, '');
  if (bare === null || bare === text) return null;
  return examineReport(readWritten(withText(folder, file, bare), slug, shared), ledger).examined;
}

/** The folder as it would be with another text in one of its files. */
const withText = (folder: ContentFolder, file: string, text: string): ContentFolder => ({
  ...folder,
  text: (path) => (path === file ? { content: text, problems: [] } : folder.text(path)),
});

/** Errors that keep a report from being published, its open questions among them. */
export const errorsOf = ({ problems }: ReportAtDesk): readonly Problem[] =>
  problems.filter(({ severity }) => severity === 'error');
