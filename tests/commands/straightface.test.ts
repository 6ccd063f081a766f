import { describe, expect, test } from 'vitest';
import { command } from '../../src/commands/cli/straightface.ts';
import { shopHelp } from '../../src/commands/helpText.ts';
import { version } from '../../src/site/version.ts';
import { contentFolder, shop } from './contentFolder.ts';
import { listen } from './listen.ts';

async function typed(...words: readonly string[]) {
  const { terminal, said, saidPlainly } = listen();
  const status = await command({ typed: words, environment: {}, terminal });
  return { status, said: said(), saidPlainly: saidPlainly() };
}

describe('straightface', () => {
  test.each([[[]], [['help']], [['--help']], [['-h']]])('%j lists the commands', async (words) => {
    expect(await typed(...words)).toEqual({ status: 0, said: shopHelp(), saidPlainly: shopHelp() });
  });

  test.each(['--version', '-v'])('%s tells the version', async (word) => {
    expect(await typed(word)).toMatchObject({ status: 0, saidPlainly: `${version}\n` });
  });

  test('hands on what stands behind the name of a command', async () => {
    expect(await typed('check', '--help')).toMatchObject({
      status: 0,
      said: 'npm run check -- [name of a report ...] [--json] [--strict]\n',
    });
    expect(await typed('build', 'one')).toMatchObject({
      status: 1,
      said: 'All reports are built together. Use: npm run build\n',
    });
  });

  test('runs it', async () => {
    const before = process.env['CONTENT_DIR'];
    process.env['CONTENT_DIR'] = contentFolder({ 'shop.yaml': shop });
    try {
      expect((await typed('check')).said).toContain('There is no report (no-reports)');
    } finally {
      if (before === undefined) delete process.env['CONTENT_DIR'];
      else process.env['CONTENT_DIR'] = before;
    }
  });

  test.each([
    ['buidl', 'There is no command "buidl". Did you mean "build"? "straightface help" lists all.\n'],
    ['publish', 'There is no command "publish". "straightface help" lists all.\n'],
    ['toString', 'There is no command "toString". "straightface help" lists all.\n'],
    ['\u001b[2J', 'There is no command "<U+001B>[2J". "straightface help" lists all.\n'],
  ])('%j is none, which is said with the nearest name', async (word, sentence) => {
    expect(await typed(word)).toEqual({ status: 1, said: sentence, saidPlainly: '' });
  });
});
