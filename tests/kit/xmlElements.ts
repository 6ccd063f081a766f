import { DOMParser } from 'linkedom';

/** Reads the words of the one element of a name in a text of XML. */
export function elementsOf(xml: string): (name: string) => string {
  const document = new DOMParser().parseFromString(xml.replaceAll(/<\?xpacket[^?]*\?>/g, ''), 'text/xml');
  return (name) => {
    const found = [...document.getElementsByTagName(name)];
    if (found.length !== 1) throw new Error(`${name} is there ${found.length} times.`);
    return found[0]?.textContent ?? '';
  };
}
