import { contentFolder, outFolder } from '../../src/site/folders.ts';
import { buildSite } from '../../src/commands/buildSite.ts';

/** One build in a process of its own, for `site.ts`: prints its stages in ms, processor time, and the most memory it held, in bytes. */
const start = performance.now();
const { built, stages } = await buildSite({
  contentDir: contentFolder(),
  outDir: outFolder(),
  terminal: { write: () => {}, writeError: () => {}, colour: false, live: false, width: 100 },
});
if (!built) throw new Error('The content of the bench does not build.');
const { maxRSS } = process.resourceUsage();
const { user, system } = process.cpuUsage();
console.log(
  JSON.stringify({
    all: performance.now() - start,
    processor: (user + system) / 1000,
    stages,
    memory: maxRSS * 1024,
  }),
);
