import { existsSync, mkdirSync, renameSync, statSync, symlinkSync, writeFileSync, chmodSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { publishSite } from '../../src/commands/publishSite.ts';
import { realDisk, type Disk } from '../../src/commands/publishingDisk.ts';
import { tidyBeside, workName } from '../../src/commands/siteLeftovers.ts';
import { markSite, readSiteMark, siteMark, siteMarkName, unfinishedName } from '../../src/site/siteMark.ts';
import { everythingIn, folderOf } from './folderOf.ts';

const oldSite = {
  'index.html': 'old front page',
  'about/index.html': 'old about',
  'reports/one/index.html': 'old one',
  'reports/gone/index.html': 'gone',
  '_astro/a.css': 'old style',
};
const newSite = {
  'index.html': 'new front page',
  'about/index.html': 'new about',
  'reports/one/index.html': 'new one',
  'reports/two/index.html': 'new two',
  '_astro/b.css': 'new style',
};

type Files = Readonly<Record<string, string>>;

const under = (folder: string, files: Files): Files =>
  Object.fromEntries(Object.entries(files).map(([path, text]) => [`${folder}/${path}`, text]));
const marked = (files: Files): Files => ({ ...files, [siteMarkName]: siteMark(Object.keys(files)) });

/** A disk with a freshly built site and what else is given. */
function disk(files: Files): { readonly root: string; readonly publish: (more?: Disk) => void } {
  const root = folderOf({ ...under('built', newSite), ...files });
  markSite(join(root, 'built'), 0o022);
  return {
    root,
    publish: (more) =>
      publishSite({
        built: join(root, 'built'),
        outDir: join(root, 'site'),
        projectFolder: join(root, 'project'),
        ...(more === undefined ? {} : { disk: more }),
      }),
  };
}

const filesIn = (folder: string): Files =>
  Object.fromEntries(Object.entries(everythingIn(folder)).filter(([, text]) => text !== '(folder)'));

const failing = (code: string): Error => Object.assign(new Error(code), { code, syscall: 'rename' });

/** Lets operations fail that `fails` says. */
function failingDisk(fails: (operation: 'rename' | 'copy', from: string, to: string) => string | null): Disk {
  const guarded = (operation: 'rename' | 'copy') => (from: string, to: string) => {
    const code = fails(operation, from, to);
    if (code !== null) throw failing(code);
    realDisk[operation](from, to);
  };
  return { ...realDisk, rename: guarded('rename'), copy: guarded('copy') };
}

describe('a folder that holds nothing but our site', () => {
  test.each([
    ['nothing there yet', {}],
    ['a site of before', under('site', marked(oldSite))],
  ])('%s: replaced whole, nothing left beside it', (_what, files) => {
    const { root, publish } = disk(files);
    publish();
    expect(everythingIn(root)).toEqual(everythingIn(folderOf(under('site', marked(newSite)))));
  });

  test('the folders above it are made', () => {
    const { root } = disk({});
    publishSite({
      built: join(root, 'built'),
      outDir: join(root, 'a/b/site'),
      projectFolder: root,
    });
    expect(filesIn(join(root, 'a/b/site'))).toEqual(marked(newSite));
  });

  test('folders of others beside it stay, whatever they are called', () => {
    const others = {
      ...under('site.old', { 'keep.txt': 'kept' }),
      ...under('site.new', { 'keep.txt': 'kept' }),
      ...under('.site.straightface-old-1', { 'keep.txt': 'kept' }),
    };
    const { root, publish } = disk({ ...under('site', marked(oldSite)), ...others });
    tidyBeside(join(root, 'site'), root);
    publish();
    expect(filesIn(root)).toEqual({ ...under('site', marked(newSite)), ...others });
  });

  test('built on another disk: copied, then the same', () => {
    const { root, publish } = disk(under('site', marked(oldSite)));
    publish(
      failingDisk((operation, from) => (operation === 'rename' && from.endsWith('built') ? 'EXDEV' : null)),
    );
    expect(filesIn(join(root, 'site'))).toEqual(marked(newSite));
    expect(existsSync(workName(join(root, 'site'), 'new'))).toBe(false);
  });

  test.each(['ENOSPC', 'EDQUOT', 'EIO'])(
    'a copy that ends with %s leaves the site of before, and nothing half',
    (code) => {
      const { root, publish } = disk(under('site', marked(oldSite)));
      const before = everythingIn(join(root, 'site'));
      const full = failingDisk((operation, from) =>
        operation === 'copy'
          ? from.endsWith(siteMarkName)
            ? null
            : code
          : from.endsWith('built')
            ? 'EXDEV'
            : null,
      );
      expect(() => publish(full)).toThrow(code);
      expect(everythingIn(join(root, 'site'))).toEqual(before);
      expect(existsSync(workName(join(root, 'site'), 'new'))).toBe(false);
    },
  );

  test('where the new one cannot be put in its place, the old one comes back', () => {
    const { root, publish } = disk(under('site', marked(oldSite)));
    const before = everythingIn(join(root, 'site'));
    expect(() =>
      publish(
        failingDisk((_operation, from, to) =>
          from.includes('-new-') && to.endsWith('/site') ? 'EIO' : null,
        ),
      ),
    ).toThrow('EIO');
    expect(everythingIn(join(root, 'site'))).toEqual(before);
  });

  test('where the old one cannot be deleted the new one is published all the same, and the next build tries again', () => {
    const { root, publish } = disk(under('site', marked(oldSite)));
    publish({
      ...realDisk,
      takeAway: () => {
        throw failing('EACCES');
      },
    });
    expect(filesIn(join(root, 'site'))).toEqual(marked(newSite));
    expect(filesIn(workName(join(root, 'site'), 'old'))).toEqual(marked(oldSite));
    tidyBeside(join(root, 'site'), root);
    expect(existsSync(workName(join(root, 'site'), 'old'))).toBe(false);
  });

  test('a file that comes in between is kept', () => {
    const { root, publish } = disk(under('site', marked(oldSite)));
    publish(
      failingDisk((_operation, from) => {
        if (from === join(root, 'site')) writeFileSync(join(from, 'reports/notes.txt'), 'kept');
        return null;
      }),
    );
    expect(filesIn(join(root, 'site'))).toEqual(marked(newSite));
    expect(filesIn(workName(join(root, 'site'), 'old'))).toEqual({ 'reports/notes.txt': 'kept' });
  });
});

describe('a folder that cannot be renamed', () => {
  test.each([
    ['something is mounted on it', 'EBUSY', (from: string) => from.endsWith('/site')],
    ['its parent may not be written', 'EACCES', (from: string) => from.endsWith('/built')],
    ['its parent can only be read', 'EROFS', (from: string) => from.endsWith('/built')],
  ])('%s: files are replaced within it', (_what, code, isRefused) => {
    const { root, publish } = disk(under('site', marked(oldSite)));
    const { ino } = statSync(join(root, 'site'));
    publish(
      failingDisk((operation, from, to) =>
        operation === 'rename' && isRefused(from) && !to.endsWith(unfinishedName) ? code : null,
      ),
    );
    expect(filesIn(join(root, 'site'))).toEqual(marked(newSite));
    expect(statSync(join(root, 'site')).ino).toBe(ino);
    expect(Object.keys(everythingIn(root)).filter((path) => !path.startsWith('site'))).not.toContain(
      expect.stringContaining('straightface-new'),
    );
  });

  test('full while new files are brought: as it was before', () => {
    const { root, publish } = disk(under('site', marked(oldSite)));
    const before = everythingIn(join(root, 'site'));
    const full = failingDisk((operation, from) =>
      operation === 'copy' ? 'ENOSPC' : from.endsWith('/site') ? 'EBUSY' : 'EXDEV',
    );
    expect(() => publish(full)).toThrow('ENOSPC');
    expect(everythingIn(join(root, 'site'))).toEqual(before);
  });

  test('missing altogether, where its parent may not be written: the error is told', () => {
    const { root, publish } = disk({});
    expect(() => publish(failingDisk(() => 'EACCES'))).toThrow('EACCES');
    expect(existsSync(join(root, 'site'))).toBe(false);
  });
});

describe('a folder in which others keep files', () => {
  const foreign = {
    CNAME: 'golf.example',
    '.nojekyll': '',
    '.git/HEAD': 'ref: refs/heads/pages',
    '.well-known/security.txt': 'Contact: shop',
    'reports/gone/photo.jpg': 'a photograph',
    'reports/one/notes/today.txt': 'notes',
  };

  test('they stay where they are, the site is the new one, and what is gone is gone', () => {
    const { root, publish } = disk(under('site', { ...marked(oldSite), ...foreign }));
    publish();
    expect(filesIn(root)).toEqual(under('site', { ...marked(newSite), ...foreign }));
  });

  test('a folder of somebody with nothing in it stays too', () => {
    const { root, publish } = disk(under('site', marked(oldSite)));
    mkdirSync(join(root, 'site/uploads'));
    publish();
    expect(everythingIn(join(root, 'site'))).toMatchObject({
      uploads: '(folder)',
      'reports/two/index.html': 'new two',
    });
  });

  test.each([
    ['a file', { 'reports/two/index.html': 'mine' }, 'reports/two/index.html'],
    ['a file where a folder goes', { 'reports/two': 'mine' }, 'reports/two'],
    ['a folder where a file goes', { '_astro/b.css/mine.txt': 'mine' }, '_astro/b.css'],
  ])('%s in the place of a new one: an error that names it, nothing touched', (_what, files, path) => {
    const { root, publish } = disk(under('site', { ...marked(oldSite), ...files }));
    const before = everythingIn(join(root, 'site'));
    expect(publish).toThrow(
      `${join(root, 'site', path)} was written by no build of ours, and the site has a file for this place. Move it away, then build again.`,
    );
    expect(everythingIn(join(root, 'site'))).toEqual(before);
  });

  test('links that somebody has put there are not followed', () => {
    const { root, publish } = disk({
      ...under('site', { ...marked(oldSite), ...foreign }),
      ...under('elsewhere', { 'index.html': 'mine' }),
    });
    renameSync(join(root, 'site/reports/gone'), join(root, 'gone'));
    symlinkSync(join(root, 'elsewhere'), join(root, 'site/reports/gone'));
    publish();
    expect(filesIn(join(root, 'elsewhere'))).toEqual({ 'index.html': 'mine' });
    expect(filesIn(join(root, 'site'))).toMatchObject({
      'index.html': 'new front page',
      'reports/gone': '(other)',
    });
  });

  test('a file and a folder of ours may change places', () => {
    const { root, publish } = disk(under('site', marked({ 'reports/two': 'a file', '_astro/b.css/x': 'x' })));
    writeFileSync(join(root, 'site/CNAME'), 'golf.example');
    publish();
    expect(filesIn(join(root, 'site'))).toEqual({ ...marked(newSite), CNAME: 'golf.example' });
  });

  test('killed between any two renames: files are whole, and the next build puts it right', () => {
    const steps = Object.keys(newSite).length;
    for (let step = 0; step <= steps; step += 1) {
      const { root } = disk(under('site', { ...marked(oldSite), ...foreign }));
      // What a build killed after `step` renames leaves: its new files, the mark of both, some already in place.
      const both = [...Object.keys(oldSite), ...Object.keys(newSite)];
      writeFileSync(join(root, 'site', siteMarkName), siteMark([...new Set(both)]));
      for (const [path, text] of Object.entries(newSite).slice(0, step)) {
        mkdirSync(join(root, 'site', path, '..'), { recursive: true });
        writeFileSync(join(root, 'site', path), text);
      }
      mkdirSync(join(root, 'site', unfinishedName));
      writeFileSync(join(root, 'site', unfinishedName, 'index.html'), 'new front page');
      publishSite({ built: join(root, 'built'), outDir: join(root, 'site'), projectFolder: root });
      expect(filesIn(join(root, 'site'))).toEqual({ ...marked(newSite), ...foreign });
    }
  });

  test('files that came during the build into a folder that was empty: an error, nothing lost', () => {
    const { root, publish } = disk(under('site', { 'thesis.txt': 'mine' }));
    expect(publish).toThrow(`${join(root, 'site')} has got files meanwhile that no build of ours wrote.`);
    expect(filesIn(join(root, 'site'))).toEqual({ 'thesis.txt': 'mine' });
  });
});

describe('what killed builds leave beside the site', () => {
  // No process has this number.
  const gone = 2 ** 22 + 1;
  const beside = (root: string, which: 'old' | 'new'): string => workName(join(root, 'site'), which, gone);
  const named = (which: 'old' | 'new'): string => `.site.straightface-${which}-${gone}`;

  test('the site that was aside comes back; the new one is taken away', () => {
    const root = folderOf({
      ...under(named('old'), marked(oldSite)),
      ...under(named('new'), marked(newSite)),
    });
    tidyBeside(join(root, 'site'), root);
    expect(filesIn(root)).toEqual(under('site', marked(oldSite)));
  });

  test('where the site is there, both are taken away, and files of others in them stay', () => {
    const root = folderOf({
      ...under('site', marked(newSite)),
      ...under(named('old'), { ...marked(oldSite), 'mine.txt': 'kept' }),
      ...under(named('new'), marked(newSite)),
    });
    tidyBeside(join(root, 'site'), root);
    expect(filesIn(root)).toEqual({
      ...under('site', marked(newSite)),
      ...under(named('old'), { 'mine.txt': 'kept' }),
    });
    expect(existsSync(beside(root, 'new'))).toBe(false);
  });

  test('those of a build at work, and folders without our mark, are left', () => {
    const files = {
      ...under(`.site.straightface-old-${process.ppid}`, marked(oldSite)),
      ...under(named('old'), { 'mine.txt': 'kept' }),
      ...under('site.old', marked(oldSite)),
    };
    const root = folderOf(files);
    tidyBeside(join(root, 'site'), root);
    expect(filesIn(root)).toEqual(files);
  });
});

describe('the mark', () => {
  test('lists all files in one order, and says so in words', () => {
    const text = siteMark(['b', 'a/"x"\n.html']);
    expect(text).toBe(siteMark(['a/"x"\n.html', 'b']));
    expect(text.split('\n')[0]).toBe(
      'A site written by Straightface. Its next build replaces the files listed here and leaves all others as they are.',
    );
    const folder = folderOf({ [siteMarkName]: text });
    expect(readSiteMark(folder)).toEqual({ kind: 'list', paths: ['a/"x"\n.html', 'b'] });
  });

  test('cut short or changed anywhere it is not believed', () => {
    const text = siteMark(['index.html', 'about/index.html']);
    for (let at = 0; at < text.length; at += 1) {
      const changed = `${text.slice(0, at)}${String.fromCharCode(text.charCodeAt(at) ^ 1)}${text.slice(at + 1)}`;
      expect(readSiteMark(folderOf({ [siteMarkName]: changed }))).toEqual({ kind: 'damaged' });
      expect(readSiteMark(folderOf({ [siteMarkName]: text.slice(0, at) }))).toEqual({ kind: 'damaged' });
    }
    expect(readSiteMark(folderOf({}))).toEqual({ kind: 'none' });
  });

  test.each(['../secret', '/etc/passwd', 'a/../../secret', '..', ''])(
    'that lists %j, which is outside of the folder, is not believed',
    (path) => {
      const folder = folderOf({ [siteMarkName]: siteMark(['index.html', path]) });
      expect(readSiteMark(folder)).toEqual({ kind: 'damaged' });
    },
  );

  test('a marked site is as readable as the umask says, whatever it was copied from', () => {
    const folder = folderOf({ 'index.html': '', 'icon.svg': '', 'reports/one/index.html': '' });
    chmodSync(join(folder, 'icon.svg'), 0o600);
    chmodSync(join(folder, 'reports'), 0o700);
    markSite(folder, 0o027);
    const modes = ['', 'index.html', 'icon.svg', 'reports', 'reports/one', 'reports/one/index.html'].map(
      (path) => (statSync(join(folder, path)).mode & 0o777).toString(8),
    );
    expect(modes).toEqual(['750', '640', '640', '750', '750', '640']);
  });
});
