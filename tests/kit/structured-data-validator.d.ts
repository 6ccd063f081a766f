/** What the tests use of the package, which brings no types. */
declare module '@adobe/structured-data-validator' {
  interface Issue {
    readonly issueMessage: string;
    readonly severity: 'ERROR' | 'WARNING';
    readonly path: readonly { readonly type?: string; readonly property?: string }[];
    readonly fieldNames: readonly string[];
  }

  export default class Validator {
    validate(extracted: {
      readonly jsonld: Readonly<Record<string, readonly object[]>>;
    }): Promise<readonly Issue[]>;
  }
}
