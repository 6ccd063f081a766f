/** A file beside `report.md` that may be a picture. */
export type PictureFile = PictureToShow | PictureNotShown;

/** A picture that a narrative shows. */
export interface PictureToShow {
  readonly kind: 'shown';
  /** Its name beside `report.md`. */
  readonly file: string;
  /** Under which the site has it; holds nothing of the file's own name, which may be somebody's. */
  readonly name: string;
  /** Of its largest edition on the site, pixels. */
  readonly width: number;
  readonly height: number;
  /** What stands behind WebP, for readers whose program does not know that. */
  readonly behind: 'jpg' | 'png';
}

/** One that the narrative does not name, and one that it names in vain. */
interface PictureNotShown {
  readonly kind: 'not-named' | 'too-large' | 'unreadable';
  readonly file: string;
}

/** No larger file is read, bytes. */
export const largestPicture = 20_000_000;

/** Widths in which the site has a picture that is as wide, pixels; none is made wider than it is. */
export const pictureWidths = [480, 960, 1440] as const;

/** The width of what stands behind WebP, and of the one in the edition in one file. */
const usualWidth = 960;

/** One edition of a picture on the site. */
export interface PictureEdition {
  readonly format: 'webp' | 'jpg' | 'png';
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** Its name below `pictures/` of the report's own page. */
  readonly file: string;
}

/** All editions of a picture: WebP from narrow to wide, and what stands behind them. */
export function pictureEditions(picture: PictureToShow): {
  readonly webp: readonly PictureEdition[];
  readonly behind: PictureEdition;
} {
  const { width: widest, height: highest, name, behind } = picture;
  const edition = (format: PictureEdition['format'], width: number): PictureEdition => ({
    format,
    width,
    height: Math.max(1, Math.round((highest * width) / widest)),
    file: `${name}-${width}.${format}`,
  });
  const widths = [...pictureWidths.filter((width) => width < widest), widest];
  return {
    webp: widths.map((width) => edition('webp', width)),
    behind: edition(behind, Math.min(usualWidth, widest)),
  };
}

/** A path of the site, from the report's own page. */
export function editionAddress({ file }: PictureEdition): string {
  return `pictures/${file}`;
}
