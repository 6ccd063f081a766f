import { checkContent } from '../../src/commands/checkContent.ts';
import { contentFolder } from '../../src/site/folders.ts';

/** One check in a process of its own, for `large.ts`: prints its time and processor time in ms, its most memory in bytes, and what it said. */
const start = performance.now();
const said: string[] = [];
const exitCode = checkContent({
  contentDir: contentFolder(),
  only: [],
  json: false,
  terminal: {
    write: (text) => said.push(text),
    writeError: (text) => said.push(text),
    colour: false,
    live: false,
    width: 100,
  },
});
const { user, system } = process.cpuUsage();
console.log(
  JSON.stringify({
    all: performance.now() - start,
    processor: (user + system) / 1000,
    memory: process.resourceUsage().maxRSS * 1024,
    exitCode,
    said: said.join(''),
  }),
);
