import { expect, test } from 'vitest';
import { accentCss } from '../../src/site/brand/accent.ts';

test('the colour of links is the shop’s on each ground it named, on paper the light one, in forced colours nobody’s', () => {
  expect(accentCss({ light: '#005a9c', dark: '#8ecaff' })).toBe(
    '@media screen and (forced-colors: none) and (prefers-color-scheme: light) {\n  html:root {\n    --link: #005a9c;\n  }\n}\n' +
      '@media screen and (forced-colors: none) and (prefers-color-scheme: dark) {\n  html:root {\n    --link: #8ecaff;\n  }\n}\n' +
      '@media print {\n  html:root {\n    --link: #005a9c;\n  }\n}\n',
  );
  expect(accentCss({ dark: '#8ecaff' })).not.toMatch(/light|print/);
});
