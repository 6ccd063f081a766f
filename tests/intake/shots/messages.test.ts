// The words of every problem that a single file can have: each file below is the smallest that shows its kind.
import { expect, it } from 'vitest';
import { readShotFile } from '../../../src/intake/shots/readShotFile.ts';

const headings = 'Shot,Club,Ball Speed (mph),Carry (yd),Side (yd)\n';
const good =
  '1,Alder,155.1,248.2,-3.1\n2,Alder,154.2,247.3,2.2\n3,Alder,156.3,251.4,0.5\n4,Alder,155.4,249.6,1.1\n';
const files: Readonly<Record<string, string | readonly number[]>> = {
  'empty-file': '',
  'not-text': [0x50, 0x4b, 3, 4, 20, 0, 6, 0, 8],
  'encoding-broken': [
    0xef,
    0xbb,
    0xbf,
    ...Buffer.from(headings + '1,T'),
    0xea,
    ...Buffer.from('te,151,240.5,1.5\n'),
  ],
  'encoding-guessed': [...Buffer.from('Club;Carry (yd)\nT'), 0xea, ...Buffer.from('te;240.5\n')],
  'trailing-nul-padding': headings + good + '\0\0\0\0',
  'nul-byte': headings + good + '5,Alder,15\0.2,241,2.0\n',
  'unclosed-quote': headings + good + '5,"Alder,155.2,241,2.0\n6,Alder,155.2,241,2.0\n',
  'header-missing': '1,Alder,155.1,248.2\n2,Alder,155.2,249.2\n',
  'club-like-summary': 'Club,Carry (yd)\nAlder,248.2\nAlder,249.1\nAlder,250.3\nAverage,249.2\n',
  'delimiter-changes': 'Shot,Club,Carry (yd)\n1,Alder,248.2\nShot;Club;Carry (yd)\n2;Alder;249.1\n',
  'heading-ambiguous': 'Shot,Club,Speed (mph),Carry (yd)\n1,Alder,155.1,248.2\n',
  'duplicate-column': 'Club,Carry (yd),Carry (yd)\nAlder,248.2,240.1\n',
  'column-not-used': 'Club,Carry (yd),Angle Launch Ball\nAlder,248.2,12.1\n',
  'too-few-cells': headings + '1,Alder,155.1,248.2\n' + good,
  'too-many-cells': headings + '1,Alder,155.1,2,248.2,-3.1\n' + good,
  'truncated-row': headings + good + '5,Alder,15',
  'last-cell-short': headings + good + '5,Alder,155.2,249.6,1',
  'misaligned-row': 'Club,Spin Rate (rpm),Carry (yd),Note\nAlder,2,765,245.1\n',
  'no-shots': headings,
  'text-line-ignored': headings + good + 'End of report\n',
  'summary-rows-ignored': headings + good + 'Average,,155.2,249.1,0.2\n',
  'duplicate-shots-removed': headings + good + '4,Alder,155.4,249.6,1.1\n',
  'mixed-decimal-marks':
    headings.replaceAll(',', ';') + good.replaceAll(',', ';') + '5;Alder;155,4;249,6;1,1\n',
  'decimal-mark-inferred': 'Club;Carry (m)\nAlder;231,327\nAlder;233,590\n',
  'decimal-mark-ambiguous': 'Club;Side Spin (rpm)\nAlder;1,250\nAlder;1,150\n',
  'negative-spelling': headings + good + '5,Alder,155.4,249.6,(1.1)\n',
  'contradictory-sign': headings + good + '5,Alder,155.4,249.6,-1.1 R\n',
  'direction-missing': headings + '1,Alder,155.1,248.2,3.1 L\n2,Alder,155.1,248.2,3.1\n',
  'not-a-number': headings + good + '5,Alder,fast,249.6,1.1\n',
  'unit-missing': 'Club,Carry\nAlder,248.2\n',
  'unit-ambiguous': 'Club,Ball Speed,Carry (m)\nAlder,100.1,66.2\nAlder,99.1,65.2\n',
  'unit-contradiction': 'Club,Ball Speed (mph)\nAlder,252.7\nAlder,253.1\n',
  'unit-unknown': 'Club,Ball Speed (ft/s)\nAlder,220.5\n',
  'unit-inferred': 'Club,Ball Speed,Carry (m)\nAlder,155.1,230.2\nAlder,154.1,229.2\n',
  'mixed-units-in-column': headings + good + '5,Alder,248.1 km/h,249.6,1.1\n',
  'column-scale-inferred': 'Club,Spin Rate (rpm),Carry (yd)\nAlder,2.5,248.2\nAlder,2.6,249.2\n',
  'implausible-value': headings + good + '5,Alder,15.58,249.6,1.1\n',
  'zero-as-missing': headings + good + '5,Alder,0,249.6,1.1\n',
  'sentinel-as-missing': headings + good + '5,Alder,-999,249.6,1.1\n',
  'club-missing': headings + good + '5,,155.2,249.6,1.1\n',
  'club-column-missing': 'Carry (yd)\n248.2\n',
  'club-from-title': 'Alder\nShot,Carry (yd)\n1,248.2\n\nBirch\nShot,Carry (yd)\n1,249.2\n',
  'club-filled-down': 'Club,Carry (yd)\nAlder,248.2\n,249.2\n,250.1\n',
  'club-names-merged': headings + good + '5,ALDER,155.2,249.6,1.1\n',
  'hitter-names-merged': 'Player,Club,Carry (yd)\nOne,Alder,248.2\none,Alder,249.2\n',
  'similar-club-names': headings + good + '5,Alder.,155.2,249.6,1.1\n',
  'hitter-missing': 'Player,Club,Carry (yd)\nOne,Alder,248.2\n,Alder,249.2\n',
  'multiple-hitters': 'Player,Club,Carry (yd)\nOne,Alder,248.2\nTwo,Alder,249.2\n',
  'shots-marked-excluded': 'Club,Carry (yd),Excluded\nAlder,248.2,\nAlder,149.2,yes\n',
  'warm-up-shots': 'Shot,Club,Carry (yd)\nWarm-up,Alder,248.2\n1,Alder,149.2\n',
  'mark-unclear': 'Club,Carry (yd),Excluded\nAlder,248.2,\nAlder,149.2,perhaps\n',
  'date-ambiguous': 'Date,Club,Carry (yd)\n04/05/2026,Alder,248.2\n',
  'time-not-read': 'Time,Club,Carry (yd)\nhalf past ten,Alder,248.2\n',
  'formula-like-text': 'Club,Carry (yd)\n=1+1,248.2\n',
  'markup-in-text': 'Club,Carry (yd)\n<b>Alder</b>,248.2\n',
};

const bytesOf = (content: string | readonly number[]): Uint8Array =>
  typeof content === 'string' ? new TextEncoder().encode(content) : Uint8Array.from(content);

it('are plain, placed, and say what to do', () => {
  const words = Object.entries(files).map(([kind, content]) => {
    const { problems } = readShotFile('shots.csv', bytesOf(content));
    const problem = problems.find((each) => each.kind === kind);
    if (problem === undefined) return `${kind} was not reported`;
    const place = `${kind} (${problem.severity}) line ${problem.line ?? '-'}, cell ${problem.column ?? '-'}`;
    const lines = [
      place,
      `  expected: ${problem.expected}`,
      `  found: ${problem.found ?? 'nothing'}`,
      `  ${problem.cure}`,
    ];
    return [...lines, ...(problem.forReader === null ? [] : [`  reader: ${problem.forReader}`])].join('\n');
  });
  expect(`\n${words.join('\n')}\n`).toMatchInlineSnapshot(`
    "
    empty-file (error) line -, cell -
      expected: a line of headings and a row for each shot
      found: nothing
      Export the session again.
    not-text (error) line -, cell -
      expected: a CSV, which is plain text
      found: a zip file or a spreadsheet (.xlsx, .ods, .numbers)
      Export or save the session as CSV.
    encoding-broken (error) line 2, cell -
      expected: text in the encoding that the file states
      found: bytes that are no characters
      Export the session again, as UTF-8 if you are asked.
    encoding-guessed (warning) line -, cell -
      expected: UTF-8, or a mark at the start of the file that names its encoding
      found: Windows-1252
      Check names with accents: the file was read as Windows-1252, which spreadsheets often write; save it as UTF-8 to be sure.
    trailing-nul-padding (warning) line -, cell -
      expected: nothing after the last row
      found: 4 empty bytes
      Nothing need be done if the last shot is in the file; else export it again.
    nul-byte (error) line 6, cell 3
      expected: a number, or nothing where there was no reading
      found: 15␀.2
      Export the session again: the file is damaged here.
    unclosed-quote (error) line 6, cell 2
      expected: a closing quote in the same cell
      found: a quote that opens and does not close before the next cell
      Close that quote or take it away; everything behind it may be misread.
    header-missing (error) line 1, cell -
      expected: a line of headings in English words, such as Club, Carry (yd), Ball speed (mph)
      found: 1,Alder,155.1,248.2
      Export with such headings, or write a report that names the columns under "columns".
    club-like-summary (warning) line 5, cell -
      expected: the name of what was hit
      found: Average (1 row)
      If these rows sum up shots, export the file without them, or delete them and say so in the report; they count as shots now.
    delimiter-changes (warning) line 3, cell -
      expected: one delimiter in the whole file
      found: headings that can be read with another one only
      Check the shots below this line: it was read with its own delimiter.
    heading-ambiguous (error) line 1, cell 3
      expected: a heading that can mean one thing only
      found: Speed (mph)
      Write club speed or ball speed, or name the column in the report under "columns".
    duplicate-column (error) line 1, cell 3
      expected: one column for carry
      found: columns 2 and 3; in line 2 they say 248.2 and 240.1
      Rename or delete one of the two, or tell in the report under "columns" which one counts.
    column-not-used (warning) line 1, cell 3
      expected: a heading that names one metric of the trade, such as launch angle
      found: Angle Launch Ball
      If it is launch angle, write in report.md: columns: {launch_angle: "Angle Launch Ball"}; if it is something else, nothing need be done.
    too-few-cells (error) line 2, cell -
      expected: 5 cells, one for each heading
      found: 4
      Give the row the cell it lacks, or delete the row and say so in the report.
    too-many-cells (error) line 2, cell 6
      expected: 5 cells, one for each heading
      found: 6; beyond the last heading stands "-3.1"
      Put quotes around a cell that holds a comma, or export without thousands marks.
    truncated-row (error) line 6, cell 3
      expected: 5 cells and a line end
      found: 3 cells, then the file stops
      Export the session again: more shots may be missing.
    last-cell-short (warning) line 6, cell 5
      expected: a last cell as long as those above it (1.1), and a line end
      found: 1, then the file stops
      Compare this cell with the device; if something is missing, export the session again. If it is whole, end the line with Enter.
      reader: The session file stops without a line end in its last row, which may lack a digit.
    misaligned-row (error) line 2, cell 2
      expected: one number, perhaps 2765
      found: 2 and 765 in two cells
      Export with quotes around numbers that hold a comma, or without thousands marks.
    no-shots (error) line 1, cell -
      expected: a row for each shot below the headings
      found: nothing
      Export the session again.
    text-line-ignored (warning) line 6, cell -
      expected: a row with one cell for each heading
      found: End of report
      Nothing need be done if this line is a remark; if it is a shot, give it all its cells.
    summary-rows-ignored (warning) line 6, cell -
      expected: one row for each shot
      found: rows of averages and the like in line 6
      Nothing need be done: they are no shots and are left out.
    duplicate-shots-removed (warning) line 6, cell -
      expected: each shot once
      found: the same as line 5 in every cell
      Nothing need be done: the shot is counted once.
      reader: Line 6 of the file repeats line 5 and is counted once.
    mixed-decimal-marks (warning) line 6, cell 3
      expected: one decimal mark in the whole file: here mostly a point (12.5)
      found: 155,4
      Check these numbers; each was read by itself, and none was changed.
    decimal-mark-inferred (warning) line 2, cell 2
      expected: a number that tells the decimal mark, such as 12.5 or 12,5
      found: 231,327
      Check that the decimal mark is a comma (12,5); the other reading is physically impossible.
    decimal-mark-ambiguous (error) line 2, cell 2
      expected: numbers that can be read in one way
      found: 1,250, with a point (12.5) or with a comma (12,5)
      Export with one decimal, or without thousands marks.
    negative-spelling (warning) line 6, cell 5
      expected: negative numbers with a minus in front, such as -4.2
      found: (1.1)
      Check the sign: 1 cell in this column read as negative.
    contradictory-sign (error) line 6, cell 5
      expected: a sign or a letter for the side, not both
      found: -1.1 R
      Keep the letter or the sign, whichever is right.
    direction-missing (error) line 3, cell 5
      expected: a letter for the side, as in the other cells of this column
      found: 3.1
      Add the letter.
    not-a-number (error) line 6, cell 3
      expected: a number, or nothing where there was no reading
      found: fast
      Correct that cell from the device, or empty it.
    unit-missing (error) line 1, cell 2
      expected: carry with a unit: m, yd, ft
      found: Carry
      Write the unit into the heading, for instance "Carry (yd)", or state it in the report under "columns".
    unit-ambiguous (error) line 1, cell 2
      expected: ball speed with a unit: mph, km/h or m/s
      found: Ball Speed, which could be mph or km/h or m/s
      Write the unit into the heading, for instance "Ball Speed (mph)", or state it in the report under "columns".
    unit-contradiction (error) line 2, cell 2
      expected: ball speed between 2.24 and 235 mph
      found: 252.7, and 1 more like it
      Correct the unit in the heading; a stated unit is never overridden by a guess.
    unit-unknown (error) line 1, cell 2
      expected: m/s, mph, km/h
      found: ft/s
      Export ball speed in one of these units.
    unit-inferred (warning) line 1, cell 2
      expected: ball speed with a unit: mph, km/h or m/s
      found: Ball Speed
      Check that it is mph: every other unit is physically impossible here.
      reader: The file does not name the unit of ball speed; mph is the only one that fits the numbers.
    mixed-units-in-column (warning) line 6, cell 3
      expected: mph
      found: 248.1 km/h
      Check this cell: its own unit was obeyed.
      reader: Some values of ball speed were recorded in another unit and converted.
    column-scale-inferred (warning) line 2, cell 2
      expected: spin rate between 50 and 16000 rpm
      found: 2.5
      Check that this column is written in thousands; it was multiplied by 1000.
      reader: The file gives spin rate in thousands.
    implausible-value (error) line 6, cell 3
      expected: a carry that the ball speed can reach
      found: 15.58 beside 249.6 in Carry (yd)
      Correct that cell from the device, or delete the row and say so in the report.
    zero-as-missing (warning) line 6, cell 3
      expected: ball speed above zero
      found: 0
      Nothing need be done if the device writes 0 for "no reading": 1 cell read as not measured.
      reader: A ball speed of 0 was read as not measured (1 shot).
    sentinel-as-missing (warning) line 6, cell 3
      expected: ball speed, or an empty cell where there was no reading
      found: -999
      Nothing need be done if the device writes this for "no reading": 1 cell read as not measured.
      reader: A ball speed of -999 was read as not measured (1 shot).
    club-missing (error) line 6, cell 2
      expected: the name of the club
      found: nothing
      Write the club into that cell, or delete the row and say so in the report.
    club-column-missing (warning) line -, cell -
      expected: a column headed Club, or a line such as "Club: Head A" above the headings
      found: nothing
      Name the file under "match" of its contender; if several were hit, list what was hit with each shot in an order sheet and name that under order_sheet.
    club-from-title (warning) line 2, cell -
      expected: a column headed Club, or a line such as "Club: Head A" above the headings
      found: Alder, Birch
      Check that the line above each block of shots is the name of its club.
    club-filled-down (warning) line 3, cell 1
      expected: the name of the club in every row
      found: 2 blank cells
      Check that each name holds for the rows below it, up to the next name.
    club-names-merged (warning) line 6, cell -
      expected: one spelling: "Alder"
      found: "ALDER"
      Check that these are one club: they differ only in spaces or in capital letters.
    hitter-names-merged (warning) line 3, cell -
      expected: one spelling: "One"
      found: "one"
      Check that these are one hitter: they differ only in spaces or in capital letters.
    similar-club-names (warning) line -, cell -
      expected: names that nobody mixes up
      found: "Alder" and "Alder."
      Check whether these are one club; they are kept apart. If they are one, name both under "match" in the report.
    hitter-missing (warning) line -, cell -
      expected: the hitter of every shot
      found: 1 of 2 shots name nobody
      Write the hitter into these rows.
    multiple-hitters (warning) line -, cell -
      expected: one hitter, or a report that lists each of them
      found: 2: One, Two
      List the hitters in the report; their shots are never pooled without a word.
      reader: 2 people hit these shots.
    shots-marked-excluded (warning) line 3, cell -
      expected: a reason in the report for each shot that is not to be used
      found: 1 shot marked, in line 3
      Say in the report under "exclusions" by which rule; the shots are kept and shown.
      reader: 1 shot was marked by the fitter as not to be used.
    warm-up-shots (warning) line 2, cell -
      expected: test shots
      found: 1 warm-up shot
      Nothing need be done: warm-ups are not counted.
      reader: 1 warm-up shot in the file is not counted.
    mark-unclear (error) line 3, cell 3
      expected: yes or no
      found: perhaps
      Write yes or no into that cell, so that nobody need guess whether the shot counts.
    date-ambiguous (warning) line 2, cell -
      expected: a date that can be read in one way, such as 2026-05-04
      found: 04/05/2026
      State the date of the session in the report; dates of this form are left out, the shots are kept.
    time-not-read (warning) line 2, cell -
      expected: a time such as 10:31:07 or 2026-05-04T10:31:07
      found: half past ten
      Nothing need be done for the figures: the order of the rows counts (1 time left out).
    formula-like-text (warning) line 2, cell 1
      expected: names and notes that no spreadsheet would run as a formula
      found: =1+1
      Nothing need be done: it is kept as plain text (1 cell).
    markup-in-text (warning) line 2, cell 1
      expected: names and notes in plain words
      found: <b>Alder</b>
      Nothing need be done: it is printed as it stands, not obeyed (1 cell).
    "
  `);
});

it('come one by one: a file with one fault has one problem, or its consequences', () => {
  const several = Object.entries(files).flatMap(([kind, content]) => {
    const others = readShotFile('shots.csv', bytesOf(content)).problems.filter((each) => each.kind !== kind);
    return others.length === 0 ? [] : [`${kind}: ${others.map((each) => each.kind).join(', ')}`];
  });
  expect(several).toEqual([]);
});
