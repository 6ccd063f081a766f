/** Makes a font of some characters of another one. The package brings no types. */
declare module 'subset-font' {
  export default function subsetFont(
    font: Uint8Array,
    text: string,
    options: {
      readonly targetFormat: 'truetype';
      readonly noHinting: boolean;
      readonly preserveNameIds: readonly number[];
      readonly keepFeatures: readonly string[];
    },
  ): Promise<Uint8Array>;
}
