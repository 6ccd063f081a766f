import { z } from 'zod';

/** Something that a shop wrote in words, or did not record. */
export const said = (what: string) => z.string().nullable().describe(`${what}; null: not recorded`);

/** A yes or no of a shop, or that it did not record it. */
export const yesOrNo = (what: string) => z.boolean().nullable().describe(`${what}; null: not recorded`);
