import manifest from '../../package.json' with { type: 'json' };

/** The version of Straightface that works the figures out; printed with every report. */
export const version: string = manifest.version;
