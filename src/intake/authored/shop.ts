import type { z } from 'zod';
import type { MetricId } from '../../trade/metrics.ts';
import { answer, meaning, oneOf, text, typed, yesOrNo } from './answers.ts';
import { brandAnswers, type BrandAnswers } from './brand.ts';
import type { Keyed } from './collections.ts';
import { conditionsInDefaults, type Conditions } from './conditions.ts';
import { exportAnswers, type ExportChoice } from './exports.ts';
import { interestAnswers, type InterestAnswers } from './interests.ts';
import { licence } from './licence.ts';
import { matters } from './primary.ts';
import type { Quantity } from './quantity.ts';
import { strict } from './strict.ts';
import { webAddress, type Address } from './webAddress.ts';

const languageTag = answer(
  meaning((typed) => {
    try {
      return Intl.getCanonicalLocales(typed)[0] ?? null;
    } catch {
      return null;
    }
  }),
  {
    expected: 'a language tag such as en-GB',
    cure: 'Write a language and a country, such as en-GB or en-US.',
  },
  'a language tag, such as `en-GB` or `en-US`',
  { type: 'string', examples: ['en-GB', 'en-US'] },
).describe('how dates are written and words are spelled; `en-GB` if left out');

/** The version of what a shop writes; it goes up when a file that was right once no longer means the same. */
export const contentVersion = 1;

const schemaVersion = answer(
  typed.regex(new RegExp(`^${contentVersion}$`)).transform(() => contentVersion),
  {
    expected: `schema: ${contentVersion}, the only version that this Straightface reads`,
    cure: 'Run npm run migrate: it brings content of an earlier version along, and says what a later one needs.',
  },
  `\`${contentVersion}\``,
  {
    type: undefined,
    minLength: undefined,
    pattern: undefined,
    enum: [contentVersion, String(contentVersion)],
  },
).describe('the version of the keys of all files in `content/`');

const reuse = strict({
  terms: text('the terms on which charts may be used again').exactOptional(),
  credit: text('the credit line').exactOptional(),
  licence_charts: licence('the licence of the charts').exactOptional(),
  licence_data: licence('the licence of the shots and findings').exactOptional(),
});

type Reuse = z.infer<typeof reuse>;

export const shopAnswers = strict({
  schema: schemaVersion.exactOptional(),
  name: text('the name of the shop'),
  address: webAddress.exactOptional(),
  contact: text('where a reader reports an error: an e-mail address or a page').exactOptional(),
  brand: brandAnswers.describe('what pages show of the shop’s own').exactOptional(),
  interests: interestAnswers.describe('interests that are the same for all reports').exactOptional(),
  reuse: reuse.describe('on what terms others may use charts and data').exactOptional(),
  exports: exportAnswers.exactOptional(),
  defaults: strict({
    units: oneOf(['yards', 'metres'])
      .describe('the units that a page shows first; `yards` if left out')
      .exactOptional(),
    locale: languageTag.exactOptional(),
    ...conditionsInDefaults,
    matters: matters.describe('smallest gaps that matter').exactOptional(),
  })
    .describe('what holds for every report that does not say otherwise')
    .exactOptional(),
  strict: yesOrNo
    .describe('whether what is found in the wording of narratives stops the build; `no` if left out')
    .exactOptional(),
});

type ShopAnswers = z.infer<typeof shopAnswers>;

interface ShopDefaults {
  readonly units: 'yards' | 'metres';
  /** A BCP 47 language tag, for dates and numbers. */
  readonly locale: string;
  readonly conditions: Conditions;
  readonly matters: Keyed<MetricId, Quantity>;
}

/** Who publishes. */
export interface Shop {
  readonly name: string;
  readonly address: Address | null;
  /** Where a reader reports an error. */
  readonly contact: string | null;
  readonly interests: InterestAnswers;
  readonly brand: BrandAnswers;
  readonly reuse: Reuse;
  readonly exports: readonly ExportChoice[];
  readonly defaults: ShopDefaults;
  /** Whether what the linter of the narrative finds stops the build. */
  readonly strict: boolean;
}

/** The shop with everything it left out filled in. */
export function completeShop(answers: ShopAnswers): Shop {
  const { units = 'yards', locale = 'en-GB', matters: gaps = {}, ...conditions } = answers.defaults ?? {};
  return {
    name: answers.name,
    address: answers.address ?? null,
    contact: answers.contact ?? null,
    brand: answers.brand ?? {},
    interests: answers.interests ?? {},
    reuse: answers.reuse ?? {},
    exports: answers.exports ?? [],
    defaults: { units, locale, matters: gaps, conditions },
    strict: answers.strict ?? false,
  };
}
