/** A file beside `report.md` that may be a picture. */
export type PictureFile = PictureToShow | PictureNotShown;

/** A picture that a narrative shows. */
export interface PictureToShow {
  readonly kind: 'shown';
  /** Its name beside `report.md`. */
  readonly file: string;
  /** Under which the site has it, without `.webp`; holds nothing of the file's own name, which may be somebody's. */
  readonly name: string;
  /** As the site has it, pixels. */
  readonly width: number;
  readonly height: number;
}

/** One that the narrative does not name, and one that it names in vain. */
export interface PictureNotShown {
  readonly kind: 'not-named' | 'too-large' | 'unreadable';
  readonly file: string;
}

/** No larger file is read, bytes. */
export const largestPicture = 20_000_000;

/** A path of the site, from the report's own page. */
export function pictureAddress({ name }: PictureToShow): string {
  return `pictures/${name}.webp`;
}
