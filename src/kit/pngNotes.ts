/** A text in a picture's file: what it is, by the words of the standard, and itself. */
export interface PngText {
  readonly keyword:
    'Title' | 'Description' | 'Author' | 'Copyright' | 'Warning' | 'Comment' | 'XML:com.adobe.xmp';
  readonly text: string;
}

/** What the file of a picture says of it besides its pixels. */
export interface PngNotes {
  /** Resolution, which gives the picture its size on paper; null leaves that to whoever prints it. */
  readonly pixelsPerInch: number | null;
  readonly texts: readonly PngText[];
}

export const withoutNotes: PngNotes = { pixelsPerInch: null, texts: [] };
