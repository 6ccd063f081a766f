import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { frameCode } from '../../src/kit/frameCode.ts';
import { frameHeight } from '../../src/kit/frameHeight.ts';
import { offered } from './content.ts';

test('what is pasted is one frame with its title, and names of any kind do not end it', () => {
  const title = 'Which is "longer"? Oak & Sons <Max>';
  const { document } = parseHTML(
    `<body>${frameCode({ address: 'https://a.example/embed/apart/?theme=dark&units=metres', title, height: 640 })}`,
  );
  const frames = [...document.querySelectorAll('iframe')];
  expect(frames.length).toBe(1);
  expect(frames[0]?.getAttribute('title')).toBe(title);
  expect(frames[0]?.getAttribute('src')).toBe('https://a.example/embed/apart/?theme=dark&units=metres');
  expect(frames[0]?.getAttribute('height')).toBe('640');
  expect(frames[0]?.getAttribute('loading')).toBe('lazy');
  expect(document.querySelectorAll('script').length).toBe(1);
});

test.each(offered)('%s: a height is known at every width, in whole pixels', (_name, report, figure) => {
  for (const width of [320, 600, 900]) {
    const height = frameHeight(report, figure, width);
    expect(Number.isInteger(height)).toBe(true);
    expect(height).toBeGreaterThan(300);
    expect(height).toBeLessThan(4000);
  }
});
