import { closest } from 'fastest-levenshtein';
import MarkdownIt, { type Token } from 'markdown-it';
import {
  editionAddress,
  largestPicture,
  pictureEditions,
  type PictureFile,
} from '../intake/authored/picture.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Place, Problem } from '../problems/problem.ts';
import { escapeXml } from './escapeXml.ts';

/** The name of a file beside the report that an address stands for; null where it is the address of something else. */
function fileAt(address: string): string | null {
  const name = decoded(address.replace(/^\.\//, '')).normalize();
  return /[/\\:?#]/.test(name) || name === '' ? null : name;
}

function decoded(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}

function addressOf(image: Token): string {
  return String(image.attrGet('src') ?? '');
}

/** Names of the files beside the report that a narrative shows. */
export function picturesNamed(text: string): readonly string[] {
  const markdown = new MarkdownIt({ html: false });
  markdown.validateLink = () => true;
  return markdown
    .parse(text, {})
    .flatMap(({ children }) => children ?? [])
    .filter(({ type }) => type === 'image')
    .flatMap((image) => fileAt(addressOf(image)) ?? []);
}

function pictureOf(image: Token, pictures: readonly PictureFile[]): PictureFile | null {
  const name = fileAt(addressOf(image));
  return name === null ? null : (pictures.find(({ file }) => file.normalize() === name) ?? null);
}

/** How wide a page shows a picture: as its text, or the screen of a phone less its margins. */
const shownWidth = '(min-width: 700px) 660px, calc(100vw - 32px)';

/** A picture from the report's own page; nothing where there is none to show, which is then a problem. */
export function pictureHtml(image: Token, alt: string, pictures: readonly PictureFile[]): string {
  const picture = pictureOf(image, pictures);
  if (picture?.kind !== 'shown') return '';
  const title = image.attrGet('title');
  const { webp, behind } = pictureEditions(picture);
  const candidates = webp.map((edition) => `${editionAddress(edition)} ${edition.width}w`).join(', ');
  const img = [
    `<img src="${editionAddress(behind)}" alt="${escapeXml(alt)}"`,
    ...(title === null ? [] : [`title="${escapeXml(String(title))}"`]),
    `width="${picture.width}" height="${picture.height}" loading="lazy">`,
  ].join(' ');
  return `<picture><source type="image/webp" srcset="${candidates}" sizes="${shownWidth}">${img}</picture>`;
}

/** All that is wrong with a picture of a narrative. */
export function pictureProblems(
  image: Token,
  place: Partial<Place> & { readonly file: string },
  pictures: readonly PictureFile[],
): readonly Problem[] {
  const address = addressOf(image);
  const withoutText =
    image.content.trim() === ''
      ? [
          makeProblem('picture-without-text', place, {
            expected: 'a text between the square brackets that says what the picture shows',
            found: `![](${address})`,
            cure: 'Write what a reader who cannot see the picture should know.',
          }),
        ]
      : [];
  return [...withoutText, ...fileProblems(image, place, pictures)];
}

function fileProblems(
  image: Token,
  place: Partial<Place> & { readonly file: string },
  pictures: readonly PictureFile[],
): readonly Problem[] {
  const address = addressOf(image);
  const name = fileAt(address);
  if (name === null) {
    return [
      makeProblem('link-refused', place, {
        expected: 'the name of a picture that lies beside report.md: pages ask no other host for anything',
        found: address,
        cure: 'Put the picture into the folder of the report and write its name alone, for example bay.jpg.',
      }),
    ];
  }
  const picture = pictureOf(image, pictures);
  switch (picture?.kind) {
    case 'shown':
      return [];
    case 'too-large':
      return [
        makeProblem('picture-too-large', place, {
          expected: `a picture of ${largestPicture / 1_000_000} MB at most`,
          found: picture.file,
          cure: 'Save it smaller: the page shows it 1,440 pixels wide at most.',
        }),
      ];
    case 'unreadable':
      return [
        makeProblem('picture-unreadable', place, {
          expected: 'a picture as JPEG, PNG, WebP or AVIF',
          found: picture.file,
          cure: 'Save the picture as JPEG, or a drawing as PNG, and write the name of that file.',
        }),
      ];
    default: {
      const names = pictures.map(({ file }) => file);
      const near = names.length === 0 ? null : closest(name, names);
      return [
        makeProblem('picture-missing', place, {
          expected: `a picture ${name} beside report.md`,
          found: names.length === 0 ? 'no picture in the folder' : `pictures there: ${names.join(', ')}`,
          cure:
            near === null
              ? 'Copy the picture into the folder of the report, or take it out of the narrative.'
              : `Did you mean ${near}? Else copy the picture into the folder of the report.`,
        }),
      ];
    }
  }
}
