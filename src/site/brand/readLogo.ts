import { imageSize } from 'image-size';
import { decodeText } from '../../intake/authored/decodeText.ts';
import { nearest } from '../../intake/authored/nearest.ts';
import { makeProblem } from '../../problems/makeProblem.ts';
import type { Place, Problem } from '../../problems/problem.ts';
import { sha256, type ContentFolder } from '../contentFiles.ts';
import type { Logo } from './brand.ts';
import { cleanLogo } from './cleanLogo.ts';

/** Greatest sizes of the files, bytes: a drawing goes to every reader as it is, a picture is made small. */
const most = { svg: 100_000, png: 5_000_000 } as const;

/** Room at the head of a page, CSS px. */
const room = { width: 200, height: 36 } as const;

interface ReadLogo {
  readonly logo: Logo | null;
  readonly problems: readonly Problem[];
}

/**
 * A logo beside `shop.yaml`, and what is wrong with it.
 *
 * @param file its name
 * @param place of the answer that names it
 */
export function readLogo(folder: ContentFolder, file: string, place: Place): ReadLogo {
  const kind = file.toLowerCase().endsWith('.svg') ? 'svg' : 'png';
  const files = folder.files('');
  const own = files.find((name) => name.normalize() === file) ?? file;
  const size = folder.size(own);
  if (size === null) return refused(missing(file, files, place));
  if (size > most[kind]) return refused(tooLarge(file, size, most[kind], place));
  const { content, problems } = folder.bytes(own);
  if (content === null) return { logo: null, problems };
  return kind === 'svg' ? svgLogo(file, content, place) : pngLogo(file, content, place);
}

const refused = (problem: Problem): ReadLogo => ({ logo: null, problems: [problem] });

const unreadable = (
  file: string,
  place: Place,
  words: { readonly expected: string; readonly cure: string },
): ReadLogo => refused(makeProblem('logo-unreadable', place, { ...words, found: file }));

function svgLogo(file: string, bytes: Uint8Array, place: Place): ReadLogo {
  const { text } = decodeText(file, bytes);
  const cleaned = text === null ? null : cleanLogo(text);
  if (cleaned === null) {
    return unreadable(file, place, {
      expected: 'a drawing as SVG that says how large it is (viewBox, or width and height)',
      cure: 'Save it anew from the drawing program as “plain SVG”, or as PNG.',
    });
  }
  const { svg, takenOut } = cleaned;
  const name = `${sha256(new TextEncoder().encode(svg)).slice(0, 12)}.svg`;
  return {
    logo: { name, ...withinRoom(cleaned), content: { kind: 'svg', svg } },
    problems: takenOut.length === 0 ? [] : [takenOutOf(file, takenOut, place)],
  };
}

function pngLogo(file: string, bytes: Uint8Array, place: Place): ReadLogo {
  const size = pngSize(bytes);
  if (size === null) {
    return unreadable(file, place, {
      expected: 'a picture that is PNG by what it holds, not by its name alone',
      cure: 'Save it anew as PNG.',
    });
  }
  const name = `${sha256(bytes).slice(0, 12)}.png`;
  return { logo: { name, ...withinRoom(size), content: { kind: 'png', bytes } }, problems: [] };
}

interface Size {
  readonly width: number;
  readonly height: number;
}

function pngSize(bytes: Uint8Array): Size | null {
  try {
    const { width, height, type } = imageSize(bytes);
    return type === 'png' && width > 0 && height > 0 ? { width, height } : null;
  } catch {
    return null;
  }
}

/** As large as the room allows. */
function withinRoom({ width, height }: Size): Size {
  const scale = Math.min(room.width / width, room.height / height);
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

function missing(file: string, files: readonly string[], place: Place): Problem {
  const pictures = files.filter((name) => /\.(?:svg|png)$/i.test(name));
  const near = nearest(file, pictures);
  return makeProblem('logo-missing', place, {
    expected: `a file ${file} beside shop.yaml`,
    found: pictures.length === 0 ? 'no SVG or PNG there' : `there: ${pictures.join(', ')}`,
    cure:
      near === null
        ? `Copy ${file} to the folder of shop.yaml, or take the line out.`
        : `Did you mean ${near}?`,
  });
}

function tooLarge(file: string, size: number, limit: number, place: Place): Problem {
  return makeProblem('logo-too-large', place, {
    expected: `at most ${limit / 1000} kB`,
    found: `${file}, ${Math.ceil(size / 1000)} kB`,
    cure: 'Save it smaller; a drawing without pictures inside it is a few kB.',
  });
}

function takenOutOf(file: string, names: readonly string[], place: Place): Problem {
  return makeProblem('logo-cleaned', place, {
    expected: 'a drawing of shapes and colours alone, without script, pictures inside, filters and addresses',
    found: `${file}: ${names.join(', ')}`,
    cure: 'Pages show the logo without these. If it looks wrong, turn them into shapes in the drawing program, or save it as PNG.',
  });
}
