import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { openContent } from '../../src/site/openContent.ts';
import { diskCache } from '../../src/site/reportCache.ts';
import { writeSealed } from '../../src/site/sealed.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { folderOf } from '../folders/folderOf.ts';

const content = contentFolder({
  'shop.yaml': shop,
  'reports/two-heads/report.md': twoHeads(),
  'reports/two-heads/shots.csv': twoHeadsCsv,
});

/** All that a page shows of the report, as the cache in that folder gives it. */
function shown(folder: string): string {
  const { report, problems } = openContent(content, [], { cache: diskCache(folder), code: 'code' }).load(
    'two-heads',
  );
  const drawings = report?.figures.map((figure) =>
    figure.kind === 'drawn' ? [figure.svg.wide, figure.svg.narrow] : [],
  );
  return JSON.stringify([report?.findings, drawings, report?.figuresInOtherUnits(), problems]);
}

describe('a file that was sealed under the right key and is of another shape', () => {
  const folder = folderOf({});
  const whole = shown(folder);
  const names = readdirSync(folder);

  test('belongs to a report with drawings', () => {
    expect(names.map((name) => name.slice(64)).sort()).toEqual(['.json', '.other.json', '.svg.json']);
    expect(whole.includes('<svg')).toBe(true);
  });

  test.each(
    ['.json', '.svg.json', '.other.json'].flatMap((ending) =>
      ['{}', '[]', 'null', '7', '{"source":{},"findings":{},"figures":[]}'].map(
        (json) => [ending, json] as const,
      ),
    ),
  )('%s holding %s is worked out anew', (ending, json) => {
    const name = names.find((own) => own.slice(64) === ending) ?? '';
    writeSealed(join(folder, name), `${name.slice(0, 64)} ${name}`, new TextEncoder().encode(json));
    expect(shown(folder) === whole).toBe(true);
  });
});
