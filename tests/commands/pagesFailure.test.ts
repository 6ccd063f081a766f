import { expect, test } from 'vitest';
import { pagesFailure } from '../../src/commands/pagesFailure.ts';
import { ReportsFailed } from '../../src/commands/reportsFailed.ts';

test('why pages could not be built is told in a line, and for each report whose pages could not', () => {
  expect(pagesFailure(new Error('x is not a function'))).toBe('x is not a function\n');
  const failed = [
    { slug: 'two-heads', error: new Error('It was changed while the site was built. Build once more.') },
    { slug: 'three-balls', error: 'no error at all' },
  ];
  expect(pagesFailure(new ReportsFailed(failed))).toBe(
    'two-heads: It was changed while the site was built. Build once more.\nthree-balls: no error at all\n',
  );
});

test('a full disk is told as such, and a missing package with what to do', () => {
  const full = Object.assign(new Error('ENOSPC: no space left on device, write'), {
    code: 'ENOSPC',
    syscall: 'write',
    path: '/site/index.html',
  });
  expect(pagesFailure(full)).toBe(
    '/site/index.html could not be written, since the disk is full (ENOSPC): make room on it.\n',
  );
  expect(pagesFailure(new Error("Cannot find package 'sitemap' imported from x"))).toBe(
    "Cannot find package 'sitemap' imported from x\nA package is missing: run npm ci.\n",
  );
});
