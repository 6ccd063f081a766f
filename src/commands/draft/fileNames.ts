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
    const [, stem = plain, ending = ''] = /^(.*?)(\.[^.]*)?$/s.exec(plain) ?? [];
    for (let number = 1; ; number++) {
      const tried = number === 1 ? plain : `${stem}-${number}${ending}`;
      if (taken.has(tried.toLowerCase())) continue;
      taken.add(tried.toLowerCase());
      return tried;
    }
  });
}
