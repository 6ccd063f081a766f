declare module 'pa11y-ci' {
  interface Issue {
    readonly runner: 'axe' | 'htmlcs';
    readonly code: string;
    readonly message: string;
    readonly selector: string;
    readonly context: string;
  }
  interface Report {
    readonly total: number;
    readonly passes: number;
    readonly errors: number;
    readonly results: Readonly<Record<string, readonly (Issue | Error)[]>>;
  }
  export default function pa11yCi(urls: readonly string[], options: object): Promise<Report>;
}
