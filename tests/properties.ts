import fc from 'fast-check';

/**
 * Properties draw the same cases in every run, so that a failure is one of the change at hand. Other cases:
 * `PROPERTY_SEED=7 npm test`.
 */
fc.configureGlobal({ seed: Number(process.env['PROPERTY_SEED'] ?? 20260411) });
