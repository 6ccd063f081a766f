import { absoluteAddress } from './absoluteAddress.ts';
import { exportedPictures, type ExportForm } from './exportForms.ts';
import { kitOf } from './kitOf.ts';
import { licenceAddress } from './licences.ts';
import type { Node } from './linkedData.ts';
import type { Report } from './report.ts';
import { cardHeight, cardWidth } from './shareCard.ts';
import { shareCardAlt } from './shareCardWords.ts';

/** Forms of the first chart that have a shape of their own, in pixels; each is there only where the shop asks for it. */
const shapes: Partial<Record<ExportForm, readonly [width: number, height: number]>> = {
  square: [1080, 1080],
  upright: [1080, 1350],
  video: [1920, 1080],
};

/** Licences under which nobody keeps a right that a notice could state. */
const noRightsKept: readonly string[] = ['CC0-1.0', 'PDDL-1.0', 'Unlicense'];

/** The pictures that show what a report found, in every shape there is; none without an address of the site. */
export function imageNodes(report: Report): readonly Node[] {
  const { front, shop, slug } = report.source;
  const absolute = absoluteAddress(shop);
  const [first] = kitOf(report).offered;
  if (absolute === null || shop === null || first === undefined) return [];
  const { licenceCharts, terms, credit = shop.name } = shop.reuse;
  const kept =
    licenceCharts === undefined || !('id' in licenceCharts) || !noRightsKept.includes(licenceCharts.id);
  const image = (path: string, alt: string, shape?: readonly [number, number]): Node => ({
    '@type': 'ImageObject',
    contentUrl: absolute(`/reports/${slug}/${path}`),
    encodingFormat: 'image/png',
    ...(shape === undefined ? {} : { width: `${shape[0]} px`, height: `${shape[1]} px` }),
    description: alt,
    creditText: credit,
    ...(kept ? { copyrightNotice: `© ${(front.published ?? front.date).slice(0, 4)} ${shop.name}` } : {}),
    ...(licenceCharts === undefined ? {} : { license: licenceAddress(licenceCharts) }),
    ...(terms === undefined ? {} : { usageInfo: { '@type': 'CreativeWork', text: terms } }),
    acquireLicensePage: absolute('/about/#charts'),
  });
  const { defaults, exports: choices } = shop;
  const shaped = exportedPictures(first.figure.id, { own: defaults.units, choices, leads: true }).flatMap(
    ({ form, units, name }) => {
      const shape = shapes[form];
      return shape === undefined || units !== defaults.units
        ? []
        : [image(`charts/${name}.png`, first.alt, shape)];
    },
  );
  return [
    image('share.png', shareCardAlt(report), [cardWidth, cardHeight]),
    image(`charts/${first.figure.id}.png`, first.alt),
    ...shaped,
  ];
}
