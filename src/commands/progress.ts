import { timeLeft } from './timeLeft.ts';
import type { Terminal } from './terminal.ts';

/** Long work of many parts. */
export interface LongWork {
  /** What is being done: `Working out what the shots say`. */
  readonly doing: string;
  /** What there are many of: `reports`. */
  readonly items: string;
  readonly all: number;
  readonly terminal: Terminal;
  /** A clock in milliseconds. */
  readonly now: () => number;
}

/** Told by whoever does the work. */
export interface Progress {
  /** One more is done. */
  readonly step: () => void;
  /** No more comes: all are done, or the work was given up. Nothing else may be written to the terminal before. */
  readonly end: () => void;
}

/** Says how far long work is and about how long it still takes: by a bar where somebody looks on, else by lines. */
export async function progress(work: LongWork): Promise<Progress> {
  const { doing, items, all, terminal, now } = work;
  const start = now();
  const shown = terminal.live ? await bar(work) : lines(work);
  let done = 0;
  return {
    step: () => {
      done += 1;
      const left = timeLeft(done, all, now() - start);
      shown.update(done, `${done} of ${all} ${items}${left === '' ? '' : `, ${left}`}`);
    },
    end: () => {
      shown.clear();
      const count = done === all ? `${all}` : `${done} of ${all}`;
      terminal.write(`${doing}: ${count} ${items} in ${((now() - start) / 1000).toFixed(1)} s.\n`);
    },
  };
}

interface Shown {
  readonly update: (done: number, state: string) => void;
  /** Takes away what is no line of its own. */
  readonly clear: () => void;
}

const mostLines = 10;

/** Characters between the brackets of a bar; with less room for it the words stand alone. */
const mostBar = 30;
const leastBar = 5;

/** A line after each tenth of the work; the last is said by the end. */
function lines({ doing, all, terminal }: LongWork): Shown {
  const step = Math.ceil(all / mostLines);
  return {
    update: (done, state) => {
      if (done % step === 0 && done < all) terminal.write(`${doing}: ${state}\n`);
    },
    clear: () => {},
  };
}

/** Ten redraws a second at most. The cursor stays, and nothing needs to be put right after a command that is stopped. */
async function bar({ doing, items, all, terminal }: LongWork): Promise<Shown> {
  // Loaded only where a bar is shown.
  const { SingleBar } = await import('cli-progress');
  const drawn = (share: number, state: string): string => {
    const room = terminal.width - 1 - `${doing} [] ${state}`.length;
    const size = Math.min(mostBar, room);
    if (size < leastBar) return `${doing}: ${state}`.slice(0, terminal.width - 1);
    const full = Math.floor(share * size);
    return `${doing} [${'='.repeat(full)}${'-'.repeat(size - full)}] ${state}`;
  };
  const single = new SingleBar({
    // All that the library uses of a stream.
    stream: {
      isTTY: true,
      columns: terminal.width,
      write: terminal.write,
    } as unknown as NodeJS.WritableStream,
    format: (_, { progress: share }, { state }: { readonly state: string }) => drawn(share, state),
    clearOnComplete: true,
    linewrap: true,
  });
  single.start(all, 0, { state: `0 of ${all} ${items}` });
  return {
    update: (done, state) => single.update(done, { state }),
    clear: () => single.stop(),
  };
}
