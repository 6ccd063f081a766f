import { z } from 'zod';
import { words } from '../findings/shape/basics.ts';
import { contenderQuestions } from '../intake/authored/contender.ts';
import { hitterQuestions } from '../intake/authored/hitter.ts';
import type { Sheet } from '../intake/authored/sheet.ts';
import type { Source } from '../intake/authored/source.ts';
import type { Session } from '../intake/session.ts';
import { absoluteAddress } from './absoluteAddress.ts';
import { licenceText } from './licences.ts';
import { conditionsSchema, modelSchema, publishedConditions, publishedModel } from './publishedConditions.ts';
import { publishedAnswers, publishedShape } from './publishedAnswers.ts';
import { said } from './publishedWords.ts';

const day = (what: string) => z.iso.date().describe(what);
const asWritten = z.string().describe('as the shop wrote it');
const sheetOf = (whose: string) =>
  z
    .record(z.string(), z.string().describe('as on the sheet'))
    .describe(`${whose}, item by item; what has no key there was not recorded`);

const price = z
  .strictObject({
    amount: z.number().nonnegative().describe('in whole units of the currency'),
    currency: z.string().describe('as the shop wrote it'),
    on: day('the day on which it was the price'),
  })
  .nullable()
  .describe('null: not recorded');

const soldHere = words('whether the shop sells it', {
  new: 'new',
  used: 'used',
  both: 'new and used',
  no: 'it does not',
});

/** What stands in `findings.json` besides findings: who publishes them, on what terms, and what was written of the test. */
export const publicationSchema = z.strictObject({
  $schema: z
    .string()
    .describe(
      'where the JSON Schema of this file stands; from the file itself where no full address is given',
    ),
  tool: z
    .strictObject({
      name: z.literal('Straightface').describe('its name'),
      version: z.string().describe('its version'),
    })
    .describe('what calculated the findings'),
  invented: z
    .boolean()
    .describe('true: nobody hit these shots; false: the publisher does not call them invented'),
  status: words('state of the report', {
    draft: 'not published',
    published: 'it stands',
    withdrawn: 'it no longer stands',
    superseded: 'another report replaces it',
  }),
  supersededBy: z.string().nullable().describe('slug of the report that replaces this one, else null'),
  withdrawn: z
    .strictObject({ date: day('the day'), reason: z.string().describe('why') })
    .nullable()
    .describe('when and why the report was withdrawn; null: it was not'),
  address: z.url().nullable().describe('where the report stands; null: the publisher has given no address'),
  publisher: said('who publishes the report'),
  licence: said('licence of shots and findings: its short id, or the address of its text'),
  published: z.iso.date().nullable().describe('the day of publication; null: not recorded'),
  corrections: z
    .array(
      z.strictObject({
        date: day('the day of the correction'),
        what: z.string().describe('what was corrected'),
        was: z.string().describe('what stood there'),
        now: z.string().describe('what stands there since'),
      }),
    )
    .describe('what was put right after publication'),
  question: z.string().describe('what the test set out to answer'),
  varied: z.string().describe('the one thing that differs'),
  held: sheetOf('what was the same for all'),
  interests: z
    .strictObject({
      paidBy: z
        .strictObject({
          kind: words('who paid', {
            shop: 'the shop alone',
            others: 'others alone',
            shared: 'the shop and others',
            'in-words': 'see the words',
          }),
          words: asWritten,
        })
        .describe('who paid for the test'),
      commissionOrGifts: z
        .strictObject({
          kind: words('whether there was any', {
            none: 'there was none',
            some: 'there was some',
            'in-words': 'see the words',
          }),
          words: asWritten,
        })
        .describe('commission, sponsorship or gift'),
      seenBefore: z
        .strictObject({
          kind: words('who saw it', {
            'nobody-outside': 'nobody outside the shop',
            others: 'others',
            'in-words': 'see the words',
          }),
          words: asWritten,
        })
        .describe('who outside the shop saw the report, or had a say in it, before publication'),
      supplied: said('where the things compared came from, as the shop says it'),
      sentence: said("the shop's standing sentence on its interests"),
    })
    .describe('what the publisher has to gain'),
  supply: z
    .array(
      z.strictObject({
        id: z.string().describe('of the contender'),
        suppliedBy: z
          .strictObject({
            kind: words('how it came to the test', {
              'own-stock': "the shop's own stock",
              bought: 'bought by the shop',
              lent: 'lent to the shop',
              given: 'given to the shop',
              customer: "a customer's own",
              'in-words': 'see the words',
            }),
            words: asWritten,
          })
          .describe('who supplied it'),
        soldHere,
        price,
        build: sheetOf('its build sheet'),
        ...publishedShape(contenderQuestions),
      }),
    )
    .describe('where each contender came from, and what it costs'),
  golfers: z
    .array(
      z.strictObject({
        id: z.string().describe('of the golfer, as in shots.csv'),
        role: z.string().describe('who hit, as a role'),
        hand: words('right- or left-handed', { right: 'right-handed', left: 'left-handed' })
          .nullable()
          .describe('null: not recorded'),
        ...publishedShape(hitterQuestions),
      }),
    )
    .describe('who hit, without names'),
  conditions: conditionsSchema.describe('where and in front of what it was hit'),
  modelledWith: modelSchema.describe(
    'with what our flight model calculated the columns that no session file has; null: there are none',
  ),
});

type Publication = z.infer<typeof publicationSchema>;

/** What is published with the findings of a report. @param version of Straightface */
export function publicationOf(
  { front, shop, slug }: Source,
  session: Pick<Session, 'modelledWith'>,
  version: string,
): Publication {
  const absolute = absoluteAddress(shop);
  const { interests } = front;
  return {
    $schema: absolute?.('/findings.schema.json') ?? '../../findings.schema.json',
    tool: { name: 'Straightface', version },
    invented: front.inventedData,
    status: front.status,
    supersededBy: front.supersededBy,
    withdrawn: front.withdrawn,
    address: absolute?.(`/reports/${slug}/`) ?? null,
    publisher: shop?.name ?? null,
    licence: shop?.reuse.licenceData === undefined ? null : licenceText(shop.reuse.licenceData),
    published: front.published,
    corrections: front.corrections.map((correction) => ({ ...correction })),
    question: front.question,
    varied: front.varied,
    held: itemsOf(front.held),
    interests: {
      paidBy: kindAndWords(interests.paidBy),
      commissionOrGifts: kindAndWords(interests.commissionOrGifts),
      seenBefore: kindAndWords(interests.seenBefore),
      supplied: interests.supplied ?? null,
      sentence: interests.sentence ?? null,
    },
    supply: front.contenders.map((contender) => ({
      id: contender.id,
      suppliedBy: kindAndWords(contender.suppliedBy),
      soldHere: contender.soldHere,
      price: contender.price ?? null,
      build: itemsOf(contender.build ?? {}),
      ...publishedAnswers(contenderQuestions, contender),
    })),
    golfers: front.hitters.map((golfer) => ({
      id: golfer.id,
      role: golfer.role,
      hand: golfer.hand ?? null,
      ...publishedAnswers(hitterQuestions, golfer),
    })),
    conditions: publishedConditions(front),
    modelledWith: publishedModel(session),
  };
}

function kindAndWords<Kind extends string>({
  kind,
  words: written,
}: {
  readonly kind: Kind;
  readonly words: string;
}) {
  return { kind, words: written };
}

function itemsOf({ also = {}, ...items }: Sheet): Record<string, string> {
  return Object.fromEntries(
    Object.entries({ ...also, ...items }).flatMap(([key, value]) =>
      value === undefined ? [] : [[key, value]],
    ),
  );
}
