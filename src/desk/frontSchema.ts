import type { z } from 'zod';
import { frontAnswers } from '../intake/authored/front.ts';
import { takesOf } from '../intake/authored/takes.ts';

/** The schema of one answer of a report by its key; undefined where there is no such key. */
export const frontSchema = (key: string): z.ZodType | undefined =>
  takesOf(frontAnswers).inside?.find(([step]) => step === `.${key}`)?.[1];
