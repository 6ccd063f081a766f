import { existsSync, mkdirSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { dev } from 'astro';
import { devCacheFolder } from '../site/folders.ts';
import { pruneCache } from '../site/reportCache.ts';
import { asksNobody } from './buildEnvironment.ts';
import { contentGate } from './contentGate.ts';
import { desk } from './desk/deskIntegration.ts';
import { deskWork } from './desk/deskWork.ts';
import { draftInbox } from './draft/draftInbox.ts';
import { openCache } from './openFolders.ts';
import { programFolder } from './ownCode.ts';
import { servedFolders } from './servedFolders.ts';
import { siteConfig } from './siteConfig.ts';
import type { Terminal } from './terminal.ts';
import { notWritten } from './writing/notWritten.ts';

type DevServer = Awaited<ReturnType<typeof dev>>;

interface DevRequest {
  readonly contentDir: string;
  /** Null: the usual one of Astro, or the next that is free. */
  readonly port: number | null;
  readonly terminal: Terminal;
  /** Opens the desk for the person; null where its address is only printed. */
  readonly open?: ((address: string) => Promise<void>) | null;
}

/** Reports that `dev` worked out are deleted once they are so old, milliseconds. */
const keptFor = 7 * 24 * 60 * 60 * 1000;

/** How long a file of the inbox must have stayed as it is before it counts as copied, in milliseconds. */
const settled = 700;

/**
 * Live editing of a content folder: drafts are shown, pages follow every change, and whatever is put into the inbox
 * becomes a draft. Null where the cache folder may not be written into, which is then said.
 */
export async function devSite({
  contentDir,
  port,
  terminal,
  open = null,
}: DevRequest): Promise<DevServer | null> {
  if (openCache({ contentDir, projectFolder: programFolder, terminal }) === null) return null;
  // Astro and the pages are told in no other way.
  Object.assign(process.env, asksNobody, { CONTENT_DIR: contentDir });
  const inbox = join(contentDir, 'inbox');
  try {
    if (existsSync(contentDir)) mkdirSync(inbox, { recursive: true });
  } catch (error) {
    // Everything is shown all the same.
    terminal.writeError(`${notWritten(contentDir, error)}\n`);
  }
  draftInbox({ contentDir, terminal });
  pruneCache(devCacheFolder(), new Set(), new Date(Date.now() - keptFor));
  const { dev: start } = await import('astro');
  let origin = 'http://localhost';
  const atDesk = desk({
    contentDir,
    projectFolder: programFolder,
    work: deskWork(contentDir),
    uninvited: () => tell(),
  });
  let told = '';
  // An address that was used opens nothing any more: who comes without a key finds a new one here.
  const tell = (): string => {
    const address = atDesk.address(origin);
    if (address !== told) terminal.write(deskNote(address));
    told = address;
    return address;
  };
  const config = siteConfig(contentGate());
  const server = await start({
    ...config,
    integrations: [...(config.integrations ?? []), atDesk.integration],
    vite: { ...config.vite, server: { fs: { allow: [...servedFolders()] } } },
    configFile: false,
    root: programFolder,
    ...(port === null ? {} : { server: { port } }),
  });
  origin = `http://localhost:${server.address.port}`;
  const address = tell();
  terminal.write(`Session files put into ${inbox} become drafts.\n`);
  await open?.(address);
  const waiting = new Map<string, NodeJS.Timeout>();
  const consider = (path: string): void => {
    if (dirname(path) !== inbox || !/\.csv$/i.test(path)) return;
    clearTimeout(waiting.get(path));
    waiting.set(
      path,
      setTimeout(() => {
        waiting.delete(path);
        if (!existsSync(path)) return;
        if (Date.now() - statSync(path).mtimeMs < settled) consider(path);
        else draftInbox({ contentDir, names: [basename(path)], terminal });
      }, settled),
    );
  };
  server.watcher.add(inbox);
  server.watcher.on('add', consider);
  server.watcher.on('change', consider);
  return server;
}

const deskNote = (address: string): string =>
  `The desk, from a file to a published page: ${address}\nThis address opens it once, in one browser.\n`;
