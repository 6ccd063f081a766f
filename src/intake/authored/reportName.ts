import { answer, typed } from './answers.ts';

/** Hosts answer the folder above with a page of the name index.html, and some take a dot at an end away. */
export const canBeAddress = /^(?!index\.x?html?$)[\p{L}\p{N}_][\p{L}\p{M}\p{N}._-]*(?<!\.)$/iu;

/** A name under which a report stood before: a folder name alone, as it stands in the address behind `/reports/`. */
export const olderName = answer(
  typed.refine((name) => canBeAddress.test(name)).normalize('NFC'),
  {
    expected:
      'a name that the report had before, such as two-heads: what stands in the old address between /reports/ and the next slash',
    cure: 'Write the name alone, without slashes: for https://shop.example/reports/two-heads/ write two-heads.',
  },
  'the former name of its folder',
);
