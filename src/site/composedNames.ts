import type { ContentFolder } from './contentFiles.ts';

/** A name with its accents composed (Unicode NFC), as addresses and answers have it. */
export const composed = (name: string): string => name.normalize('NFC');

/**
 * A content folder whose names are all composed: some disks keep an accent apart from its letter, which looks the same
 * and is another name. A file is found under the name that it has, else under the one that composes to it.
 */
export function composedNames(folder: ContentFolder): ContentFolder {
  const steps = (path: string): readonly string[] => path.split('/').filter((step) => step !== '');
  /** The path as it is on the disk; as given where nothing there composes to it. */
  const onDisk = (path: string): string =>
    steps(path).reduce((above, step, index, all) => {
      const isLast = index === all.length - 1;
      const there = [...folder.folders(above), ...(isLast ? folder.files(above) : [])];
      const name = there.includes(step) ? step : (there.find((each) => composed(each) === step) ?? step);
      return above === '' ? name : `${above}/${name}`;
    }, '');
  const found = (path: string): string => (/[^\u0000-\u007f]/.test(path) ? onDisk(path) : path);
  const list = (names: readonly string[]): readonly string[] => names.map(composed).sort();
  return {
    root: folder.root,
    exists: folder.exists,
    text: (path) => folder.text(found(path)),
    bytes: (path) => folder.bytes(found(path)),
    folders: (path) => list(folder.folders(found(path))),
    links: (path) => list(folder.links(found(path))),
    files: (path) => list(folder.files(found(path))),
    size: (path) => folder.size(found(path)),
    hash: (path) => folder.hash(found(path)),
    everything: (path) => {
      const names = folder.everything(found(path));
      return names === null ? null : list(names);
    },
    troubleWith: (path) => folder.troubleWith(found(path)),
  };
}
