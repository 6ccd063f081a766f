// The policy of tests/fixtures/csv/README.md, sentence by sentence, on files smaller than the fixtures.
import { describe, expect, it } from 'vitest';
import { dryRunJson } from '../../../src/intake/shots/outcome.ts';
import { readShotFile } from '../../../src/intake/shots/readShotFile.ts';
import type { ShotFileOptions } from '../../../src/intake/shots/shotFile.ts';

const headings = 'Shot,Club,Ball Speed (mph),Carry (yd),Side (yd)\n';
const three = '1,Alder,155.1,248.2,-3.1\n2,Alder,154.2,247.3,2.2\n3,Birch,156.3,251.4,0.5\n';

function read(content: string | Uint8Array, options: ShotFileOptions = {}) {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  const { outcome, shots, problems } = dryRunJson(readShotFile('shots.csv', bytes, options));
  return { outcome, shots, kinds: problems.map(({ kind }) => kind).sort() };
}

/** Outcome, number of shots and kinds of problem in one line. */
const summary = (content: string | Uint8Array): string => {
  const { outcome, shots, kinds } = read(content);
  return [outcome, shots.length, ...kinds].join(' ');
};

const column = (content: string, key: string, options: ShotFileOptions = {}): readonly unknown[] =>
  read(content, options).shots.map((shot) =>
    typeof shot[key] === 'number' ? Number(shot[key].toFixed(5)) : shot[key],
  );

describe('bytes', () => {
  const utf16 = (text: string): Buffer => Buffer.from(text, 'utf16le');

  it('obeys a mark, guesses UTF-16 and Windows-1252 aloud', () => {
    expect(summary(new Uint8Array([0xff, 0xfe, ...utf16(headings + three)]))).toBe('accept 3');
    expect(summary(new Uint8Array(utf16(headings + three).swap16()))).toBe(
      'accept-with-warning 3 encoding-guessed',
    );
    expect(summary(new Uint8Array(Buffer.from(`${headings}1,Tête,155.1,248.2,-3.1\n`, 'latin1')))).toBe(
      'accept-with-warning 1 encoding-guessed',
    );
  });

  it('obeys a second mark in mid-file, also one of another encoding', () => {
    const bytes = [
      ...Buffer.from(headings + three),
      0xff,
      0xfe,
      ...utf16(headings + three.replaceAll('Alder', 'Cedar')),
    ];
    expect(read(new Uint8Array(bytes)).shots.map(({ club }) => club)).toEqual([
      'Alder',
      'Alder',
      'Birch',
      'Cedar',
      'Cedar',
    ]);
  });

  it('reads CR, LF and CRLF alike', () => {
    expect(summary((headings + three).replaceAll('\n', '\r'))).toBe('accept 3');
    expect(summary((headings + three).replaceAll('\n', '\r\n'))).toBe('accept 3');
  });
});

describe('layout', () => {
  it('takes titles, preambles, repeated headings and instruction lines for what they are', () => {
    const export_ = (club: string, date: string) =>
      `sep=,\r\nSession report\nDate,${date}\nShots,2\n\nShot,Club,Carry (yd)\n1,${club},240.1\n2,${club},241.2\n\n`;
    expect(summary(export_('Alder', '2026-05-04') + export_('Birch', '2026-05-05'))).toBe('accept 4');
  });

  it('names clubs by the title of a block, with or without headings below it', () => {
    const titled = 'Club: Alder\nShot,Carry (yd),Side (yd)\n1,240.1,2\n2,241.2,3\n\nClub: Birch\n1,242.3,4\n';
    expect(read(titled).shots.map(({ club }) => club)).toEqual(['Alder', 'Alder', 'Birch']);
    expect(read(titled).outcome).toBe('accept');
  });

  it('keeps equal shots of two blocks whose only name is the line above', () => {
    const block = (club: string) => `${club}\nShot,Carry (yd)\n1,240.1\n2,241.2\n`;
    expect(summary(`${block('Alder')}\n${block('Birch')}`)).toBe('accept-with-warning 4 club-from-title');
  });

  it('knows summary rows by their word in the shot column, never by a club', () => {
    expect(summary(`${headings}${three}Average,Alder,155.2,249.0,-0.1\nStd. Dev.,,1.1,2.2,3.3\n`)).toBe(
      'accept-with-warning 3 summary-rows-ignored',
    );
    expect(summary('Club,Carry (yd)\nAverage,240.1\nAverage,240.2\n')).toBe('accept 2');
  });

  it('refuses a short row wherever it stands, and a cut file', () => {
    expect(summary(`${headings}1,Alder,155.1\n${three}`)).toBe('reject 3 too-few-cells');
    expect(summary(`${headings}${three}4,Ald`)).toBe('reject 3 truncated-row');
    expect(summary(`${headings}${three}4`)).toBe('reject 3 truncated-row');
  });

  it('ignores surplus empty cells and refuses filled ones', () => {
    expect(summary(headings + three.replaceAll('\n', ',,\n'))).toBe('accept 3');
    // Told once where every row is so, else each by itself.
    expect(summary(headings + three.replaceAll('\n', ',7\n'))).toBe('reject 0 too-many-cells');
    expect(summary(headings + three + three.replaceAll('\n', ',7\n'))).toBe(
      'reject 3 too-many-cells too-many-cells too-many-cells',
    );
  });

  it('keeps a shot without any reading, also right above the next headings', () => {
    const csv =
      'Club,Ball Speed (mph),Carry (yd),Side (yd),Note\nAlder,155.1,248.2,1.1,\nAlder,-,-,-,\nAlder,,,,\n';
    expect(summary(csv)).toBe('accept 3');
    expect(summary(`${csv}\n${csv}`)).toBe('accept 6');
  });

  it('finds a quote that closes in another row by accident', () => {
    expect(summary(`${headings}1,"Alder,155.1,248.2,-3.1\n2,Alder 5",154.2,247.3,2.2\n`)).toContain(
      'unclosed-quote',
    );
  });

  it('lets spaces follow a closing quote, and keeps a quote inside a cell', () => {
    expect(column('"Club" ,"Carry (yd)" \n"Alder, long" ,"240.1" \nBirch 9" ,240.2\n', 'club')).toEqual([
      'Alder, long',
      'Birch 9"',
    ]);
  });

  it('follows a change of delimiter between two exports pasted together, aloud', () => {
    const csv =
      'Shot,Club,Carry (yd),Side (yd)\n1,Alder,240.1,"2"\n\nShot;Club;Carry (m);Side (m)\n1;Birch;231,5;1,5\n';
    expect(summary(csv)).toBe('accept-with-warning 2 delimiter-changes mixed-decimal-marks');
    expect(column(csv, 'carry')).toEqual([219.54744, 231.5]);
    expect(column(csv, 'line')).toEqual([2, 5]);
  });

  it('obeys sep= and refuses where no headings can be read with it', () => {
    expect(summary(`sep=;\n${(headings + three).replaceAll(',', ';')}`)).toBe('accept 3');
    expect(summary(`sep=;\n${headings}${three}`)).toBe('reject 0 header-missing');
  });
});

describe('headings', () => {
  it.each([
    ['SHOT NO.,CLUB,BALL_SPEED_MPH,carryYd'],
    ['Shot #,Contender,Ball velocity [mph],Carry in yards'],
    ['shot number,club name,Ball-Speed mph,CARRY DISTANCE (yards)'],
    ['Hit,Head,ballSpeed (mph),Carry (yd) [measured]'],
  ])('understands %s', (line) => {
    const csv = `${line}\n1,Alder,155.1,248.2\n`;
    expect(read(csv)).toMatchObject({ outcome: 'accept', shots: [{ shotNo: 1, club: 'Alder' }] });
    expect(column(csv, 'ballSpeed')).toEqual([69.3359]);
    expect(column(csv, 'carry')).toEqual([226.95408]);
  });

  it.each([
    'Target Carry',
    'Carry (target)',
    'Carry Limit',
    'Max Carry',
    'Optimal Carry',
    'Carry Average',
    'Side Total',
  ])('does not take "%s" for a measurement', (name) => {
    expect(read(`Club,${name} (yd),Ball Speed (mph)\nAlder,248.2,155.1\n`).shots[0]).not.toHaveProperty(
      'carry',
    );
  });

  it('refuses a heading of two meanings, naming both', () => {
    const { problems } = readShotFile(
      'shots.csv',
      new TextEncoder().encode('Club,Distance (yd),Side (yd)\nAlder,248.2,1.2\n'),
    );
    expect(problems[0]?.cure).toBe(
      'Write carry or total distance, or name the column in the report under "columns".',
    );
  });

  it('lets the report name any column, its unit, side and class', () => {
    const csv = 'Club,Dist,Off,Ball Speed (mph)\nAlder,230.5,3.5,155.1\n';
    const options: ShotFileOptions = {
      columns: {
        carry: { heading: 'dist', unit: 'm', class: 'modelled' },
        side: { heading: 'Off', unit: 'yd', positive: 'left' },
        ball_speed: { heading: 'Ball Speed (mph)', unit: 'km/h' },
      },
    };
    const { columns, problems, rows } = readShotFile('shots.csv', new TextEncoder().encode(csv), options);
    expect(problems).toMatchObject([{ kind: 'unit-contradiction' }, { kind: 'unit-contradiction' }]);
    expect(rows[0]?.values.side).toBeCloseTo(-3.2004, 9);
    expect(columns.carry).toMatchObject({ class: 'modelled', unit: 'm', heading: 'Dist' });
    expect(columns.ball_speed?.unit).toBe('km/h');
  });

  it('refuses a column that the report names and the file has not', () => {
    const { problems } = readShotFile('shots.csv', new TextEncoder().encode(headings + three), {
      columns: { apex: { heading: 'Top', unit: 'ft' } },
    });
    expect(problems).toMatchObject([
      {
        kind: 'override-matches-nothing',
        expected: 'a column headed "Top"',
        found: 'Shot, Club, Ball Speed (mph), Carry (yd), Side (yd)',
        cure: 'Write the heading in the report exactly as it stands in the file.',
      },
    ]);
  });

  it('takes the club from the column that the report names', () => {
    const csv = 'Club,Shaft,Carry (yd)\nDriver,Stiff,248.2\nDriver,Soft,247.1\n';
    expect(column(csv, 'club', { club: 'Shaft' })).toEqual(['Stiff', 'Soft']);
  });

  it('takes the column of what is varied for the contenders, or of the only part that is named', () => {
    const csv = 'Club,Ball,Carry (yd)\n7-iron,Heron,168.2\n7-iron,Plover,167.1\n';
    expect(column(csv, 'club')).toEqual(['7-iron', '7-iron']);
    expect(column(csv, 'club', { varied: 'ball' })).toEqual(['Heron', 'Plover']);
    expect(column('Ball,Carry (yd)\nHeron,168.2\nPlover,167.1\n', 'club')).toEqual(['Heron', 'Plover']);
  });

  it('takes the column of what is varied for nothing else', () => {
    const csv = 'Length,Carry (yd)\n45 in,248.2\n46 in,247.1\n';
    expect(column(csv, 'club', { varied: 'length' })).toEqual(['45 in', '46 in']);
  });

  it('refuses two columns of one meaning that differ, joins two that agree', () => {
    expect(summary('Club,Carry (yd),Carry Distance (yd)\nAlder,248.2,240.1\n')).toBe(
      'reject 1 duplicate-column',
    );
    expect(summary('Club,Carry (yd),Carry (m)\nAlder,248.2,226.9\n')).toBe('accept 1');
  });

  it('refuses two columns for the club that do not say the same, and takes two that do', () => {
    expect(summary('Club,Club,Carry (yd)\nAlder,Birch,248.2\n')).toBe('reject 1 duplicate-column');
    expect(summary('Club,Club,Carry (yd)\nAlder, Alder ,248.2\n')).toBe('accept 1');
    const [problem] = readShotFile(
      'shots.csv',
      new TextEncoder().encode('Club,Club,Carry (yd)\nAlder,Alder,1\nAlder,Birch,248.2\n'),
    ).problems.filter(({ kind }) => kind === 'duplicate-column');
    expect(problem).toMatchObject({
      expected: 'one column for the club',
      found: 'columns 1 and 2; in line 3 they say "Alder" and "Birch"',
      cure: 'Rename or delete one of the two.',
    });
  });
});

describe('units', () => {
  it.each([
    ['Shot,Club,Ball Speed,Carry\n,,mph,yd\n1,Alder,155.1,248.2\n'],
    ['Shot,Club,Ball Speed,Carry\n#,-,[mph],(yd)\n1,Alder,155.1,248.2\n'],
    ['Shot,Club,Ball Speed,Carry\n1,Alder,155.1 mph,248.2yd\n'],
    [',,mph,yd\nShot,Club,Ball Speed,Carry\n1,Alder,155.1,248.2\n'],
    [
      'Carry and total in yards; ball speed and club speed in mph\nShot;Club;Ball Speed;Carry\n1;Alder;155.1;248.2\n',
    ],
    ['Units: mph, yd, deg, rpm\nShot,Club,Ball Speed,Carry\n1,Alder,155.1,248.2\n'],
    ['Speed unit: mph\nDistance unit: yards\nShot,Club,Ball Speed,Carry\n1,Alder,155.1,248.2\n'],
    ['All distances in yards, speeds in mph\nShot;Club;Ball Speed;Carry\n1;Alder;155.1;248.2\n'],
  ])('are found in %j', (csv) => {
    expect(read(csv).outcome).toBe('accept');
    expect(column(csv, 'ballSpeed')).toEqual([69.3359]);
    expect(column(csv, 'carry')).toEqual([226.95408]);
  });

  it('are asked for where a distance has none', () => {
    expect(summary('Club,Carry (yd),Side\nAlder,248.2,1.2\n')).toBe('reject 1 unit-missing');
    expect(summary('Club,Carry\nAlder,248.2 yd\nAlder,240.1\n')).toBe('reject 2 unit-missing');
    // Heights beside yards are in feet as often as in yards.
    expect(summary('Distance unit: yd\nClub,Carry,Apex\nAlder,248.2,95.1\n')).toBe('reject 1 unit-missing');
  });

  it('of speed are worked out only where every other is impossible', () => {
    const csv = 'Club,Ball Speed,Club Speed,Carry (m)\nAlder,155.1,105.2,230.1\nAlder,154.1,104.2,229.1\n';
    expect(summary(csv)).toBe('accept-with-warning 2 unit-inferred unit-inferred');
    expect(column(csv, 'clubSpeed')).toEqual([47.02861, 46.58157]);
  });

  it('that contradict each other or the numbers are refused', () => {
    expect(summary('Distance: m\nDistance: yd\nClub,Carry\nAlder,248.2\n')).toBe(
      'reject 1 unit-contradiction',
    );
    expect(summary('Distance unit: m\nClub,Carry (yd)\nAlder,248.2\n')).toBe('reject 1 unit-contradiction');
    expect(summary('Club,Ball Speed (yd),Carry (yd)\nAlder,155.1,248.2\n')).toContain('unit-contradiction');
    expect(summary('Club,Ball Speed (km/h),Carry (m)\nAlder,155.1,230.1\nAlder,154.1,231.1\n')).toBe(
      'reject 2 unit-contradiction unit-contradiction',
    );
  });

  it('may be a thousand times the number, and no other multiple', () => {
    const spins = (values: readonly string[]): string =>
      `Club,Ball Speed (mph),Spin Rate (rpm)\n${values.map((value) => `Alder,155.1,${value}`).join('\n')}\n`;
    expect(summary(spins(['2.501', '2.702']))).toBe('accept-with-warning 2 column-scale-inferred');
    expect(column(spins(['2.5', '2.7']), 'spinRate')).toEqual([2500, 2700]);
    expect(summary(spins(['25.1', '27.2']))).toBe('reject 2 unit-contradiction');
  });
});

describe('numbers', () => {
  it('may be marked with two decimal marks, each cell by itself, aloud', () => {
    const csv = 'Club;Carry (m);Spin Rate (rpm)\nAlder;231.5;2,501\nAlder;230,5;2.502\nAlder;229.5;2503\n';
    expect(summary(csv)).toBe('accept-with-warning 3 mixed-decimal-marks');
    expect(column(csv, 'spinRate')).toEqual([2501, 2502, 2503]);
  });

  it('with three digits behind every mark are decided by the limits', () => {
    expect(summary('Club,Spin Rate (rpm),Carry (m)\nAlder,"2,500",230\n')).toBe(
      'accept-with-warning 1 decimal-mark-inferred',
    );
    expect(summary('Club;Side Spin (rpm)\nAlder;1,250\n')).toBe('reject 1 decimal-mark-ambiguous');
  });

  it.each([
    ['1.2 L', -1.09728],
    ['L 1.2', -1.09728],
    ['1.2 yd R', 1.09728],
    ['1.2R yd', 1.09728],
    ['1.2 left', -1.09728],
    ['−1.2', -1.09728],
    ['0.0', 0],
    ['1.2e0', 1.09728],
    ['="-1.2"', -1.09728],
  ])('read %s', (cell, value) => {
    expect(column(`Club,Side (yd)\nAlder,${cell}\n`, 'side')).toEqual([value]);
    expect(read(`Club,Side (yd)\nAlder,${cell}\n`).outcome).toBe('accept');
  });

  it.each([
    'fast',
    '1/2',
    '0x1F',
    '1,2,3',
    '1.2.3',
    '--1.2',
    '1.2 knots',
    '²',
    '２４０',
    '12:30',
    '148%',
    '1e999',
  ])('do not read %s', (cell) => {
    expect(summary(`Club,Side (yd)\nAlder,"${cell}"\n`)).toBe('reject 1 not-a-number');
  });

  it('refuse a sign with a letter, and a number without a letter among letters', () => {
    expect(summary('Club,Side (yd)\nAlder,-1.2 R\n')).toBe('reject 1 contradictory-sign');
    expect(summary('Club,Side (yd)\nAlder,1.2 R\nAlder,1.2\n')).toBe('reject 2 direction-missing');
  });

  it.each([
    ['"Side (yd, left +)"', -1],
    ['"Side (yd, left positive)"', -1],
    ['Side (yd) [L+/R-]', -1],
    ['Side (yd) (+ = left)', -1],
    ['Side (yd) (right is negative)', -1],
    ['Side (yd) [R+/L-]', 1],
    ['Side L/R (yd)', 1],
  ])('obey the sign that the heading %s states', (heading, sign) => {
    expect(column(`Club,${heading}\nAlder,10\n`, 'side')).toEqual([sign * 9.144]);
  });

  it('obey a sign stated above the headings or in the units row', () => {
    expect(column('Side: left is positive\nClub,Side (yd)\nAlder,10\n', 'side')).toEqual([-9.144]);
    expect(column('Club,Side\n,yd (L+)\nAlder,10\n', 'side')).toEqual([-9.144]);
  });

  it('take the side from a column of letters', () => {
    expect(column('Club,Side (yd),L/R\nAlder,10,L\nAlder,5,R\nAlder,0,\n', 'side')).toEqual([
      -9.144, 4.572, 0,
    ]);
  });

  it('are missing where the device wrote zero or nines, aloud', () => {
    const csv =
      'Club,Ball Speed (mph),Club Speed (mph),Smash Factor,Spin Rate (rpm)\nAlder,155.1,0.0,0,-999\nAlder,155.1,105.1,1.48,2500\n';
    expect(summary(csv)).toBe('accept-with-warning 2 sentinel-as-missing zero-as-missing zero-as-missing');
    expect(read(csv).shots[0]).toMatchObject({ clubSpeed: null, smash: null, spinRate: null });
    expect(summary('Club,Side (yd),Launch Angle\nAlder,0,0\n')).toBe('accept 1');
  });

  it('that cannot be are refused at their cell, not mended', () => {
    const { problems } = readShotFile(
      's.csv',
      new TextEncoder().encode(`${headings}${three}4,Birch,155.2,2501,1.1\n`),
    );
    expect(problems).toMatchObject([{ kind: 'implausible-value', line: 5, column: 4, found: '2501' }]);
  });
});

describe('names, marks and times', () => {
  it('fill clubs down only where blanks are the rule', () => {
    expect(summary('Club,Carry (yd)\nAlder,240.1\n,240.2\n,240.3\n')).toBe(
      'accept-with-warning 3 club-filled-down',
    );
    expect(summary('Club,Carry (yd)\n,240.1\nAlder,240.2\n,240.3\n')).toContain(
      'reject 3 club-filled-down club-missing',
    );
    expect(summary('Club,Carry (yd)\nAlder,240.1\nAlder,240.2\n,240.3\n')).toBe('reject 3 club-missing');
  });

  it('take the name above the headings for blank cells only where no row below it names another', () => {
    const above = (rows: string): string => `Club: Alder\nClub,Carry (yd)\n${rows}`;
    expect(column(above(',240.1\n,240.2\n'), 'club')).toEqual(['Alder', 'Alder']);
    expect(column(above('alder,240.1\n,240.2\n'), 'club')).toEqual(['alder', 'alder']);
    expect(summary(above('Birch,240.1\n,240.2\nBirch,240.3\n'))).toBe('reject 3 club-missing');
    expect(summary(above('Alder,240.1\nBirch,240.2\n,240.3\n'))).toBe('reject 3 club-missing');
    // Also where blanks are the rule: it could be the name above the headings or the one in the row above.
    expect(summary(above('Birch,240.1\n,240.2\n,240.3\n'))).toBe('reject 3 club-missing club-missing');
    // And under headings that stand once more below it.
    expect(summary(above('Birch,240.1\nClub,Carry (yd)\n,240.2\n'))).toBe('reject 2 club-missing');
    const { problems } = readShotFile('s.csv', new TextEncoder().encode(above('Birch,240.1\n,240.2\n')));
    expect(problems).toMatchObject([
      {
        line: 4,
        column: 1,
        found: 'a blank; the line above the headings says "Alder", other rows name others',
      },
    ]);
    const hitters = 'Player: One\nPlayer,Club,Carry (yd)\nTwo,Alder,240.1\n,Alder,240.2\n';
    expect(summary(hitters)).toBe('accept-with-warning 2 hitter-missing');
    expect(column(hitters, 'hitter')).toEqual(['Two', null]);
    expect(column(hitters.replace('Two', ''), 'hitter')).toEqual(['One', 'One']);
  });

  it('count a repeated row once, and keep equal numbers under another number', () => {
    expect(summary(`${headings}${three}3,Birch,156.3,251.4,0.5\n`)).toBe(
      'accept-with-warning 3 duplicate-shots-removed',
    );
    expect(summary(`${headings}${three}4,Birch,156.3,251.4,0.5\n`)).toBe('accept 4');
    expect(summary('Club,Carry (yd)\nAlder,240.1\nAlder,240.1\n')).toBe('accept 2');
  });

  it.each([
    ['Excluded', 'yes', ''],
    ['Excluded', 'x', ''],
    ['Exclude', '1', '0'],
    ['Use', 'no', 'yes'],
    ['Included', 'FALSE', 'TRUE'],
    ['Status', 'excluded', 'ok'],
    ['Use?', 'n', 'y'],
  ])('keep a shot marked %s: %s as excluded', (heading, out, used) => {
    const csv = `Club,Carry (yd),${heading}\nAlder,240.1,${used}\nAlder,140.1,${out}\n`;
    expect(summary(csv)).toBe('accept-with-warning 2 shots-marked-excluded');
    expect(column(csv, 'excluded')).toEqual([false, true]);
  });

  it('leave alone what a status says otherwise', () => {
    expect(summary('Club,Carry (yd),Status\nAlder,240.1,measured\nAlder,140.1,synced\n')).toBe('accept 2');
    expect(column('Club,Carry (yd),Shot Type\nAlder,240.1,Warm-up\nAlder,140.1,Test\n', 'excluded')).toEqual([
      true,
      false,
    ]);
  });

  it('ask where a mark is unclear', () => {
    expect(summary('Club,Carry (yd),Use\nAlder,240.1,x\nAlder,140.1,\n')).toBe('reject 2 mark-unclear');
  });

  it('know warm-ups by the shot column or a column of their own', () => {
    expect(summary(`${headings}Warm-up,Alder,155.1,248.2,-3.1\n${three}`)).toBe(
      'accept-with-warning 4 warm-up-shots',
    );
    expect(column('Club,Carry (yd),Warm-up\nAlder,240.1,yes\nAlder,140.1,no\n', 'excluded')).toEqual([
      true,
      false,
    ]);
  });

  it.each([
    ['2026-05-04 10:30:01', '2026-05-04T10:30:01', []],
    ['14/05/2026 10:30', '2026-05-14T10:30', []],
    ['05/14/2026 2:30 PM', '2026-05-14T14:30', []],
    ['4 May 2026 12:05 am', '2026-05-04T00:05', []],
    ['04.05.2026 10:30', '2026-05-04T10:30', []],
    ['10:30:01', '10:30:01', []],
    ['04/05/2026 10:30', null, ['date-ambiguous']],
    ['31/02/2026 10:30', null, ['time-not-read']],
    ['half past ten', null, ['time-not-read']],
  ])('read the time %s', (cell, time, kinds) => {
    const csv = `Time,Club,Carry (yd)\n${cell},Alder,240.1\n`;
    expect(read(csv).kinds).toEqual(kinds);
    expect(column(csv, 'time')).toEqual([time]);
  });

  it('warn of a date above the headings that can be read in two ways', () => {
    expect(summary('Date,04/05/2026\nClub,Carry (yd)\nAlder,240.1\n')).toBe(
      'accept-with-warning 1 date-ambiguous',
    );
    expect(summary('Date: 2026-05-04\nClub,Carry (yd)\nAlder,240.1\n')).toBe('accept 1');
  });

  it('let one telling date decide for the file', () => {
    const csv = 'Date,Time,Club,Carry (yd)\n04/05/2026,10:30,Alder,240.1\n14/05/2026,10:31,Alder,240.2\n';
    expect(column(csv, 'time')).toEqual(['2026-05-04T10:30', '2026-05-14T10:31']);
  });

  it('take the shot number from the column that says so, not from the number of the row', () => {
    const csv = 'No,Shot,Club,Carry (yd)\n1,1,Alder,240.1\n2,2,Alder,240.2\n3,1,Birch,240.3\n';
    expect(column(csv, 'shotNo')).toEqual([1, 2, 1]);
  });

  it('count rounds that have names, and take no offence at shots that have', () => {
    const csv =
      'Round,Shot,Club,Carry (yd)\nmorning,a3,Alder,240.1\nnoon,b7,Alder,240.2\nmorning,c1,Alder,240.3\n';
    expect(read(csv).outcome).toBe('accept');
    expect(column(csv, 'round')).toEqual([1, 2, 1]);
    expect(column(csv, 'shotNo')).toEqual([null, null, null]);
  });

  it('keep who hit what, from a column or a title', () => {
    expect(summary('Player,Club,Carry (yd)\nOne,Alder,240.1\nTwo,Alder,240.2\n')).toBe(
      'accept-with-warning 2 multiple-hitters',
    );
    expect(column('Player: One\nClub,Carry (yd)\nAlder,240.1\n', 'hitter')).toEqual(['One']);
  });

  it('keep formulas, markup and control characters to the letter', () => {
    const csv = 'Club,Carry (yd),Note\n=cmd|x,240.1,<script>\n\u202eAlder,240.2,a & b < c\n';
    expect(read(csv).kinds).toEqual(['formula-like-text', 'markup-in-text']);
    expect(column(csv, 'club')).toEqual(['=cmd|x', '\u202eAlder']);
    expect(column(csv, 'note')).toEqual(['<script>', 'a & b < c']);
  });

  it('warn of names that look alike, and of no others', () => {
    expect(summary('Club,Carry (yd)\nAlder 9,240.1\nAlder9,240.2\n')).toBe(
      'accept-with-warning 2 similar-club-names',
    );
    expect(summary('Club,Carry (yd)\nAlder,240.1\nAdler,240.2\n')).toBe(
      'accept-with-warning 2 similar-club-names',
    );
    expect(
      summary(
        'Club,Carry (yd)\nHead A,240.1\nHead B,240.2\nBeta,240.3\nZeta,240.4\nAlder 9,240.1\nAlder 10,240.1\n',
      ),
    ).toBe('accept 6');
  });
});

describe('limits of size', () => {
  it('refuse a file above 50 MB', () => {
    const { problems } = readShotFile('big.csv', new Uint8Array(50_000_001));
    expect(problems).toMatchObject([
      {
        kind: 'file-too-large',
        expected: 'at most 50 MB',
        found: '50.0 MB',
        cure: 'Split the session over several files.',
      },
    ]);
  });

  it('refuse more than 200,000 rows', () => {
    const { problems } = readShotFile(
      'long.csv',
      new TextEncoder().encode(`Club,Carry (yd)\n${'A,240\n'.repeat(200_001)}`),
    );
    expect(problems).toMatchObject([
      {
        kind: 'too-many-rows',
        expected: 'at most 200000 rows',
        cure: 'Split the session over several files.',
      },
    ]);
  });

  it('refuse a row without end', () => {
    const { problems } = readShotFile(
      'wide.csv',
      new TextEncoder().encode(`Club,Carry (yd)\n"${'A'.repeat(1_000_100)}",240\n`),
    );
    expect(problems[0]).toMatchObject({
      kind: 'record-too-long',
      line: 2,
      expected: 'a row of at most a million characters',
      cure: 'Export the session again; a quote that never closes is the usual cause.',
    });
  });
});

describe('a file of 100,000 rows', () => {
  it('is read row by row in a few seconds', () => {
    const clubs = ['Head A', 'Head B', 'Gamma 9'];
    const tenth = (low: number, width: number, index: number): number =>
      low + ((index * 7919) % (10 * width)) / 10;
    const lines = Array.from({ length: 100_000 }, (_, index) =>
      [
        index + 1,
        clubs[index % 3],
        tenth(150, 10, index).toFixed(1),
        tenth(240, 20, index).toFixed(1),
        tenth(-15, 30, index).toFixed(1),
      ].join(','),
    );
    const start = process.cpuUsage();
    const { rows, problems } = readShotFile(
      'long.csv',
      new TextEncoder().encode(`${headings}${lines.join('\n')}\n`),
    );
    // Microseconds of work, not of waiting: about 1.5 s on the machine it was written on, and 430 MB at the most.
    expect(process.cpuUsage(start).user).toBeLessThan(10_000_000);
    expect(problems).toEqual([]);
    expect(rows).toHaveLength(100_000);
    const sum = rows.reduce((total, { values }) => total + (values.carry ?? 0), 0);
    const wanted = lines.reduce((total, line) => total + Number(line.split(',')[3]) * 0.9144, 0);
    expect(sum).toBeCloseTo(wanted, 3);
    expect(rows.at(-1)).toMatchObject({ shotNo: 100_000, club: 'Head A', line: 100_001 });
  }, 60_000);
});
