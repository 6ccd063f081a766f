import type { Pixels } from './pixels.ts';

/** The rows of a picture as runs of pixels of one colour; all of it holds until the next picture is read. */
export interface ColourRuns {
  /** The colours of the picture, four bytes each, in the order in which they appear. */
  readonly colours: Uint8Array;
  /** How many pixels have each. */
  readonly counts: Int32Array;
  /** Of each run the number of its colour, then the column where it ends. */
  readonly runs: Int32Array;
  /** Where in `runs` those of each row end; a row without any is as the one above. */
  readonly ends: Int32Array;
}

/** The colours met so far, and a table of open addresses by which they are found, twice as long or longer. */
interface Known {
  readonly colours: Int32Array<ArrayBuffer>;
  readonly counts: Int32Array<ArrayBuffer>;
  /** Its length is a power of two. */
  readonly keys: Int32Array;
  /** The number of the colour beside it plus one; 0 where none stands. */
  readonly numbers: Int32Array;
}

const roomFor = (most: number): Known => ({
  colours: new Int32Array(most),
  counts: new Int32Array(most),
  keys: new Int32Array(most * 2),
  numbers: new Int32Array(most * 2),
});

// A picture has a few thousand colours and a hundred thousand runs; what the last one needed serves the next.
let room = roomFor(1 << 12);
let runsRoom = new Int32Array(1 << 18);

/** A drawing is mostly paper: many rows are as the one above, and few pixels differ from the one before. */
export function colourRuns({ width, height, rgba }: Pixels): ColourRuns {
  // Four bytes at once, in any order: only whether two pixels are alike matters.
  const whole = rgba.byteOffset % 4 === 0 ? rgba : rgba.slice();
  const words = new Int32Array(whole.buffer, whole.byteOffset, width * height);
  const bytes = Buffer.from(whole.buffer, whole.byteOffset, width * height * 4);
  const stride = width * 4;
  const ends = new Int32Array(height);
  room.numbers.fill(0);
  let { colours, counts, keys, numbers } = room;
  let runs = runsRoom;
  let [count, length, rowRuns, alike] = [0, 0, 0, 0];
  for (let row = 0; row < height; row += 1) {
    const top = row * stride;
    if (row > 0 && bytes.compare(bytes, top - stride, top, top, top + stride) === 0) {
      alike += 1;
      ends[row] = length;
      continue;
    }
    countAgain(counts, runs, rowRuns, length, alike);
    alike = 0;
    rowRuns = length;
    // At most two numbers for each pixel of a row.
    if (length + width * 2 > runs.length) runs = runsRoom = withRoom(runs, width * 2);
    const start = row * width;
    const end = start + width;
    for (let from = start; from < end;) {
      const word = words[from] ?? 0;
      let to = from + 1;
      while (to < end && words[to] === word) to += 1;
      let slot = slotOf(word, keys, numbers);
      if (numbers[slot] === 0) {
        if (count === colours.length) {
          ({ colours, counts, keys, numbers } = room = larger(room));
          slot = slotOf(word, keys, numbers);
        }
        colours[count] = word;
        counts[count] = 0;
        count += 1;
        keys[slot] = word;
        numbers[slot] = count;
      }
      const number = (numbers[slot] ?? 0) - 1;
      counts[number] = (counts[number] ?? 0) + to - from;
      runs[length] = number;
      runs[length + 1] = to - start;
      length += 2;
      from = to;
    }
    ends[row] = length;
  }
  countAgain(counts, runs, rowRuns, length, alike);
  return {
    colours: new Uint8Array(colours.buffer, 0, count * 4),
    counts: counts.subarray(0, count),
    runs: runs.subarray(0, length),
    ends,
  };
}

/** The pixels of a row, whose runs stand between two places, once more for each of the rows below that are as it is. */
function countAgain(counts: Int32Array, runs: Int32Array, from: number, to: number, times: number): void {
  let start = 0;
  for (let run = from; times > 0 && run < to; run += 2) {
    const number = runs[run] ?? 0;
    const end = runs[run + 1] ?? 0;
    counts[number] = (counts[number] ?? 0) + (end - start) * times;
    start = end;
  }
}

/** The place of a colour in the table, or the place it will get. */
function slotOf(word: number, keys: Int32Array, numbers: Int32Array): number {
  const last = keys.length - 1;
  let slot = Math.imul(word ^ (word >>> 15), 0x2c1b3c6d);
  slot = (slot ^ (slot >>> 13)) & last;
  while (numbers[slot] !== 0 && keys[slot] !== word) slot = (slot + 1) & last;
  return slot;
}

/** The same colours with room for twice as many. */
function larger(full: Known): Known {
  const made = roomFor(full.colours.length * 2);
  made.colours.set(full.colours);
  made.counts.set(full.counts);
  for (const [number, word] of full.colours.entries()) {
    const slot = slotOf(word, made.keys, made.numbers);
    made.keys[slot] = word;
    made.numbers[slot] = number + 1;
  }
  return made;
}

function withRoom(values: Int32Array, more: number): Int32Array<ArrayBuffer> {
  const made = new Int32Array(values.length * 2 + more);
  made.set(values);
  return made;
}
