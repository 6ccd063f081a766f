import { sayPair } from '../prose/english/pairInWords.ts';
import { pairAnswer } from '../prose/pairAnswer.ts';
import { findingsJson, type SentenceOf } from './publishedFindings.ts';
import type { Report } from './report.ts';
import { shotsCsv } from './shotsCsv.ts';

/** A file that stands beside a report, as `datapackage.json` describes it. */
interface DataFile {
  readonly name: string;
  readonly path: string;
  readonly title: string;
  readonly format: string;
  readonly mediatype: string;
  /** Made when it is asked for: each file of a report asks for one alone. */
  readonly text: string;
}

/** What every file of a report is made with besides the report. */
export interface DataTools {
  /** Of Straightface. */
  readonly version: string;
  /** The programs that recalculate the findings, the same for every report. */
  readonly reproduceR: string;
  readonly reproducePython: string;
}

const sentenceOf: SentenceOf = (pair, metric, { telling }) =>
  sayPair(pairAnswer(pair, metric, telling.findings.design), telling);

/** The shots and findings of a report, and the programs that calculate the one from the other. */
export function dataFiles(report: Report, { version, reproduceR, reproducePython }: DataTools) {
  const again = (language: string): string => `Recalculates the findings from the shots, in ${language}`;
  return {
    shots: {
      name: 'shots',
      path: 'shots.csv',
      title: 'Every shot, those left out with their reason',
      format: 'csv',
      mediatype: 'text/csv',
      get text() {
        return shotsCsv(report);
      },
    },
    findings: {
      name: 'findings',
      path: 'findings.json',
      title: 'What follows from them, SI units',
      format: 'json',
      mediatype: 'application/json',
      get text() {
        return findingsJson(report, version, sentenceOf);
      },
    },
    reproduceR: {
      name: 'reproduce-r',
      path: 'reproduce.R',
      title: again('R'),
      format: 'R',
      mediatype: 'text/x-r-source',
      text: reproduceR,
    },
    reproducePython: {
      name: 'reproduce-py',
      path: 'reproduce.py',
      title: again('Python with SciPy'),
      format: 'py',
      mediatype: 'text/x-python',
      text: reproducePython,
    },
  } satisfies Readonly<Record<string, DataFile>>;
}
