import { escapeXml } from '../prose/escapeXml.ts';

/** What an editor's archive reads of a picture, by the names of XMP and of the IPTC photo metadata standard. */
interface PictureRecord {
  readonly title: string;
  readonly alternativeText: string;
  readonly creator: string;
  /** Credit and terms of use. */
  readonly rights: string;
  /** Where the text of the licence stands; null without one. */
  readonly licence: string | null;
  readonly source: string;
  /** What anyone who uses the picture must know; empty where there is nothing. */
  readonly instructions: string;
}

const spaces = {
  dc: 'http://purl.org/dc/elements/1.1/',
  photoshop: 'http://ns.adobe.com/photoshop/1.0/',
  xmpRights: 'http://ns.adobe.com/xap/1.0/rights/',
  Iptc4xmpCore: 'http://iptc.org/std/Iptc4xmpCore/1.0/xmlns/',
};

/** A record as an XMP packet (ISO 16684-1). */
export function xmpPacket(record: PictureRecord): string {
  const { title, alternativeText, creator, rights, licence, source, instructions } = record;
  const xmlns = Object.entries(spaces)
    .map(([prefix, address]) => ` xmlns:${prefix}="${address}"`)
    .join('');
  const told = [
    inLanguages('dc:title', title),
    inLanguages('dc:rights', rights),
    inLanguages('Iptc4xmpCore:AltTextAccessibility', alternativeText),
    `<dc:creator><rdf:Seq><rdf:li>${escapeXml(creator)}</rdf:li></rdf:Seq></dc:creator>`,
    plain('dc:source', source),
    plain('photoshop:Credit', creator),
    plain('photoshop:Source', source),
    ...(licence === null ? [] : [plain('xmpRights:WebStatement', licence)]),
    ...(instructions === '' ? [] : [plain('photoshop:Instructions', instructions)]),
  ];
  return (
    `<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>` +
    `<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">` +
    `<rdf:Description rdf:about=""${xmlns}>${told.join('')}</rdf:Description></rdf:RDF></x:xmpmeta>` +
    `<?xpacket end="r"?>`
  );
}

function plain(name: string, text: string): string {
  return `<${name}>${escapeXml(text)}</${name}>`;
}

function inLanguages(name: string, text: string): string {
  return `<${name}><rdf:Alt><rdf:li xml:lang="x-default">${escapeXml(text)}</rdf:li></rdf:Alt></${name}>`;
}
