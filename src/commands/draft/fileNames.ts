/** A name of each file that a report can use beside itself and what is `there`, no two alike. */
export function fileNames(
  names: readonly string[],
  there: readonly string[] = ['report.md'],
): readonly string[] {
  const taken = new Set<string>(there.map((name) => name.toLowerCase()));
  return names.map((name) => {
    // What a report refuses as a path: the start of one elsewhere, and marks that other systems keep for themselves.
    const plain =
      name
        .normalize('NFC')
        .replace(/[\\/:*?"<>|\u0000-\u001f]/g, '-')
        .replace(/^[~.\s]+/, '')
        .trim() || 'session.csv';
    const [, whole = plain, ending = ''] = /^(.*?)(\.[^.]{0,10})?$/s.exec(plain) ?? [];
    const stem = shortened(whole);
    for (let number = 1; ; number++) {
      const tried = number === 1 ? `${stem}${ending}` : `${stem}-${number}${ending}`;
      if (taken.has(tried.toLowerCase())) continue;
      taken.add(tried.toLowerCase());
      return tried;
    }
  });
}

/** Bytes that the name of a file has at most, its ending and a number apart: disks take 255 for all of it. */
const longest = 200;

function shortened(name: string): string {
  let bytes = 0;
  return [...name]
    .filter((character) => {
      bytes += Buffer.byteLength(character);
      return bytes <= longest;
    })
    .join('');
}
