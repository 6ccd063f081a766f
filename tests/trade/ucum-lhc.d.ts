/** What the tests use of the package, which brings no types. */
declare module '@lhncbc/ucum-lhc' {
  export class UcumLhcUtils {
    static getInstance(): UcumLhcUtils;
    validateUnitString(code: string): { readonly status: 'valid' | 'invalid' | 'error' };
    convertUnitTo(
      from: string,
      value: number,
      to: string,
    ): { readonly status: 'succeeded' | 'failed' | 'error'; readonly toVal: number | null };
  }
}
