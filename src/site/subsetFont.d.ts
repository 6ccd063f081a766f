declare module 'subset-font' {
  /** A font with only the letters of `text`. */
  export default function subsetFont(
    font: Uint8Array,
    text: string,
    options: {
      readonly targetFormat: 'woff2';
      readonly noHinting: boolean;
      /** Tags of OpenType features that stay. */
      readonly keepFeatures: readonly string[];
    },
  ): Promise<Uint8Array>;
}
