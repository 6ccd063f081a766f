import { textOf, type ContentFolder } from './contentFiles.ts';

/**
 * A content folder of which every file that is read, and every list, is read once: what was hashed is then surely what
 * is worked with, even if somebody saves a file meanwhile. Files that are only hashed are not held.
 */
export function rememberedFiles(folder: ContentFolder): ContentFolder {
  const bytes = remembered(folder.bytes);
  return {
    root: folder.root,
    exists: folder.exists,
    bytes,
    text: (path) => textOf(path, bytes(path)),
    size: remembered(folder.size),
    hash: remembered(folder.hash),
    folders: remembered(folder.folders),
    links: remembered(folder.links),
    files: remembered(folder.files),
    everything: remembered(folder.everything),
    troubleWith: remembered(folder.troubleWith),
  };
}

function remembered<Value>(read: (path: string) => Value): (path: string) => Value {
  const known = new Map<string, Value>();
  return (path) => {
    const found = known.get(path);
    if (found !== undefined) return found;
    const value = read(path);
    known.set(path, value);
    return value;
  };
}
