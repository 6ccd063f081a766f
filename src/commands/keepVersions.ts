import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Source } from '../intake/authored/source.ts';
import type { Ledger } from '../intake/ledger.ts';
import { systemCode, systemWords } from '../problems/systemWords.ts';
import { stampOfEdition, versionFile, wantedVersions } from '../site/keptVersions.ts';
import { recordsOf } from '../site/ownLedger.ts';
import type { Disk } from './writing/disk.ts';
import { prepareNewFile } from './writing/wholeFile.ts';

/**
 * Keeps the versions that corrections have replaced, as long as the built site still has them: the whole report in one
 * file, copied into the folder of the report. Nothing that is there is written over. Gives what to say of it.
 *
 * @param before what is on record so far
 * @param outDir the built site
 */
export function keepVersions(
  sources: readonly Source[],
  before: Ledger,
  { contentDir, outDir, disk }: { readonly contentDir: string; readonly outDir: string; readonly disk: Disk },
): readonly string[] {
  return sources.flatMap((source) => {
    const wanted = source.front.status === 'published' ? wantedVersions(source, before) : [];
    const names = [source.slug, ...source.front.aliases];
    const edition =
      wanted.length === 0 ? null : names.map((name) => editionIn(outDir, name)).find((own) => own !== null);
    const recorded = recordsOf(source, before).at(-1)?.corrections ?? 0;
    // Said once, when the correction goes on record.
    const isNew = recorded < source.front.corrections.length;
    return wanted.flatMap(({ day, stamp }): readonly string[] => {
      const file = `reports/${source.slug}/${versionFile(day)}`;
      if (edition?.stamp !== stamp) {
        const says = `${source.slug}: the version before the correction of ${day} is not kept, as ${outDir} does not have it`;
        return isNew ? [says] : [];
      }
      put(join(contentDir, 'reports', source.slug), versionFile(day), edition.bytes, disk);
      return [`${source.slug}: the version before the correction of ${day} is kept in ${file}`];
    });
  });
}

interface Edition {
  readonly bytes: Uint8Array;
  readonly stamp: string | null;
}

function editionIn(outDir: string, slug: string): Edition | null {
  const file = join(outDir, 'reports', slug, 'report.html');
  if (!existsSync(file)) return null;
  try {
    const bytes = readFileSync(file);
    return { bytes, stamp: stampOfEdition(bytes.toString('utf8')) };
  } catch (error) {
    // Not to be read is not to be kept, which is then said.
    systemWords(error);
    return null;
  }
}

function put(report: string, name: string, bytes: Uint8Array, disk: Disk): void {
  disk.mkdirSync(join(report, 'versions'), { recursive: true });
  const prepared = prepareNewFile(disk, join(report, name), bytes);
  try {
    prepared.put();
  } catch (error) {
    // Another command was first; what is there stays.
    if (systemCode(error) !== 'EEXIST') throw error;
  } finally {
    prepared.discard();
  }
}
