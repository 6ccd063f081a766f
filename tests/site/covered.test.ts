import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { allOr } from '../everyday.ts';
import { drawnMarks, sharesSeen } from '../charts/drawnMarks.ts';
import { reportPages, twoReports } from './sites.ts';

const charts = ['shots', 'landing'].flatMap((id) => ['wide', 'narrow'].map((variant) => `${id}-${variant}`));

describe.each(allOr(reportPages, twoReports))('$name', ({ folder, file }) => {
  const page = readFileSync(join(folder, file), 'utf8');

  test.each(charts)('%s: a fifth of every shot at least is seen beside the marks over it', (chart) => {
    const drawn = [...page.matchAll(/<svg\b[^>]* aria-labelledby="([a-z-]+)-name"[\s\S]*?<\/svg>/g)].filter(
      ([, name = '']) => name.replace(/-(yards|metres)$/, '') === chart,
    );
    for (const [svg] of drawn) {
      const marks = drawnMarks(svg, [0, 1, 2, 3, 4, 5]);
      expect(marks.length).toBeGreaterThan(10);
      expect(Math.min(...sharesSeen(marks))).toBeGreaterThan(0.2);
    }
    expect(drawn.length).toBeGreaterThan(0);
  });
});
