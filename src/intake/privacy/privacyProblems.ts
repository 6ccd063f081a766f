import { makeProblem } from '../../problems/makeProblem.ts';
import type { Place, Problem } from '../../problems/problem.ts';
import { decodeFile } from '../shots/decodeFile.ts';
import { findDelimiter } from '../shots/delimiter.ts';
import { readHeaderRow } from '../shots/headerRow.ts';
import { readRecords } from '../shots/records.ts';
import { personalDataIn, type PersonalData, type PersonalKind } from './personalData.ts';

interface FileBytes {
  /** Path from the content folder. */
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** A finding with the place where it stands. */
interface PlacedData extends Pick<PersonalData, 'kind' | 'text'> {
  readonly place: Place;
}

const numeral = /^[\s+\-−]?[\d.,:\s]*$/u;
const serialHeading = /^(?:club |head |shaft )?(?:serial(?:[ -]?(?:no|nr|number))?|s\/n)\.?$/i;
const phoneHeading = /^(?:tel(?:ephone)?|phone|mobile|cell ?phone)(?:[ -]?(?:no|nr|number))?\.?$/i;

/**
 * Warnings for e-mail addresses, phone numbers and serial numbers in `report.md` and in the text cells of CSV files.
 * Nothing is taken out: whether somebody agreed to be named only the shop knows. What was found is shown by its first
 * characters alone, since the table of problems may be public itself.
 */
export function privacyProblems(
  reportFile: string,
  report: string,
  files: readonly FileBytes[],
): readonly Problem[] {
  return [...inLines(reportFile, report), ...files.flatMap(inCells)].map(({ kind, text, place }) =>
    makeProblem('personal-data', place, {
      expected: 'nothing that tells who somebody is or whose a thing is',
      found: `${article[kind]} ${kind}: ${[...text].slice(0, 2).join('')}…`,
      cure: cures[kind],
    }),
  );
}

const article: Readonly<Record<PersonalKind, string>> = {
  'e-mail address': 'an',
  'phone number': 'a',
  'serial number': 'a',
};

const cures: Readonly<Record<PersonalKind, string>> = {
  'e-mail address': 'Take it out, or be sure that its owner wants it to be public.',
  'phone number': 'Take it out, or be sure that its owner wants it to be public.',
  'serial number': 'Take it out: a serial number leads to the owner of the club and is not published.',
};

function inLines(file: string, text: string): readonly PlacedData[] {
  return text.split(/\r\n|\n|\r/).flatMap((line, index) =>
    personalDataIn(line).map(({ kind, text: part, at }) => ({
      kind,
      text: part,
      place: { file, line: index + 1, column: at + 1, columnName: null },
    })),
  );
}

/** The first of each kind in each column; one column of addresses is one thing to mend. */
function inCells({ file, bytes }: FileBytes): readonly PlacedData[] {
  const text = decodeFile(bytes, () => undefined)?.text;
  if (text === undefined) return [];
  const isNamed = (heading: string): boolean => /^(?:shot|contender)$/i.test(heading.trim());
  const { records } = readRecords(text, findDelimiter(text, isNamed).delimiter);
  let headings: readonly string[] = [];
  const first = new Map<string, PlacedData>();
  for (const { cells, line } of records) {
    headings = readHeaderRow(cells, isNamed)?.map(({ text: heading }) => heading) ?? headings;
    for (const [index, cell] of cells.entries()) {
      const heading = headings[index] ?? '';
      for (const { kind, text: part } of dataInCell(cell, heading)) {
        const key = `${index} ${kind}`;
        if (first.has(key)) continue;
        const place = { file, line, column: index + 1, columnName: heading || null };
        first.set(key, { kind, text: part, place });
      }
    }
  }
  return [...first.values()];
}

function dataInCell(cell: string, heading: string): readonly Pick<PersonalData, 'kind' | 'text'>[] {
  const text = cell.trim();
  if (text === '') return [];
  const digits = text.replace(/\D/g, '').length;
  if (serialHeading.test(heading) && digits >= 3) return [{ kind: 'serial number', text }];
  if (phoneHeading.test(heading) && digits >= 6) return [{ kind: 'phone number', text }];
  // A cell of digits alone is a reading, whatever its groups look like.
  return numeral.test(text) && !/^[+0]\d[\d ]{8,}$/.test(text) ? [] : personalDataIn(text);
}
