import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

/** A browser and the environment it is started with. */
export interface Chromium {
  readonly executablePath: string;
  readonly env: Record<string, string | undefined>;
}

/**
 * The browser that comes as a package, unpacked once under its version. It is started with the libraries and fonts
 * of the package and no others, so that it needs nothing of the machine and draws the same on each.
 *
 * @throws where the package has none for this system
 */
export function packagedChromium(): Chromium {
  const folder = unpacked();
  const fonts = join(folder, 'fonts');
  writeFontsConf(join(fonts, 'fonts.conf'), fonts);
  return {
    executablePath: join(folder, 'chromium'),
    env: {
      ...process.env,
      LD_LIBRARY_PATH: join(folder, 'al2023', 'lib'),
      FONTCONFIG_FILE: join(fonts, 'fonts.conf'),
    },
  };
}

const packageFolder = resolve('node_modules/@sparticuz/chromium');

/** Unpacks aside first: a process killed meanwhile leaves no half browser under the name that is believed. */
function unpacked(): string {
  if (process.platform !== 'linux')
    throw new Error(
      'The packaged browser is for Linux. Name another one: CHROMIUM=/path/to/chromium npm test',
    );
  const { version }: { readonly version: string } = JSON.parse(
    readFileSync(join(packageFolder, 'package.json'), 'utf8'),
  );
  const folder = resolve('.cache/chromium', version);
  if (existsSync(folder)) return folder;
  const aside = `${folder}.${process.pid}`;
  mkdirSync(aside, { recursive: true });
  const unpack = `import(${JSON.stringify(pathToFileURL(join(packageFolder, 'build/index.js')).href)}).then(({ default: chromium }) => chromium.executablePath())`;
  const { status, stderr } = spawnSync(process.execPath, ['--input-type=module', '--eval', unpack], {
    encoding: 'utf8',
    // The package unpacks into the temporary folder, and its libraries only where it takes itself for a function host.
    env: { ...process.env, TMPDIR: aside, AWS_LAMBDA_JS_RUNTIME: 'nodejs24.x' },
  });
  if (status !== 0) {
    rmSync(aside, { recursive: true, force: true });
    throw new Error(`The packaged browser cannot be unpacked into ${folder}: ${stderr}`);
  }
  // Somebody else may have unpacked it meanwhile; it is the same browser.
  if (existsSync(folder)) rmSync(aside, { recursive: true, force: true });
  else renameSync(aside, folder);
  return folder;
}

/**
 * The package's own configuration names folders of another machine. Without any font the browser waits for ever
 * whenever it looks for one in place of another.
 */
function writeFontsConf(file: string, fonts: string): void {
  const conf = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${escaped(fonts)}</dir>
  <cachedir>${escaped(join(fonts, 'cache'))}</cachedir>
</fontconfig>
`;
  if (!existsSync(file) || readFileSync(file, 'utf8') !== conf) writeFileSync(file, conf);
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
