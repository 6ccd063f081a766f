import type { Contender } from '../intake/authored/contender.ts';
import { readContender } from '../intake/authored/readContender.ts';
import { readShop } from '../intake/authored/readShop.ts';
import type { Shared } from '../intake/authored/shared.ts';
import type { Shop } from '../intake/authored/shop.ts';
import type { Block } from '../intake/authored/tree.ts';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import { noBrand, type Brand } from './brand/brand.ts';
import { readBrand } from './brand/readBrand.ts';
import type { ContentFolder } from './contentFiles.ts';

export const shopFile = 'shop.yaml';

/** What the reports of a folder share. */
export function readShared(folder: ContentFolder): {
  readonly shared: Shared;
  readonly brand: Brand;
  readonly problems: readonly Problem[];
} {
  const shop = readShopFile(folder);
  const sheets = readSheets(folder);
  return {
    shared: {
      shop: shop.shop,
      contenders: sheets.contenders,
      typed: { shop: shop.typed, contenders: sheets.typed },
      shopUnread: shop.unread,
    },
    brand: shop.brand,
    problems: [...shop.problems, ...sheets.problems],
  };
}

function readShopFile(folder: ContentFolder): {
  shop: Shop | null;
  brand: Brand;
  typed: Block;
  unread: boolean;
  problems: readonly Problem[];
} {
  const { content: text, problems } = folder.text(shopFile);
  if (text !== null) {
    const read = readShop(shopFile, text);
    const own =
      read.shop === null
        ? { brand: noBrand, problems: [] }
        : readBrand(folder, read.shop.brand, read.placeOf);
    return {
      ...read,
      brand: own.brand,
      unread: read.shop === null,
      problems: [...problems, ...read.problems, ...own.problems],
    };
  }
  if (problems.length > 0) return { shop: null, brand: noBrand, typed: {}, unread: true, problems };
  const other = folder.files('').find((name) => /^shop\.(?:ya?ml|txt|yaml\.txt|yml\.txt)$/i.test(name));
  const problem = makeProblem(
    'shop-missing',
    { file: shopFile },
    {
      expected: 'shop.yaml with at least the name of who publishes',
      found: other ?? null,
      cure:
        other !== undefined
          ? `Rename ${other} to shop.yaml.`
          : 'Write content/shop.yaml with a line such as "name: Example Golf Workshop". Until then pages say "Publisher not recorded".',
      ...(other === undefined ? {} : { severity: 'error' as const }),
    },
  );
  return { shop: null, brand: noBrand, typed: {}, unread: other !== undefined, problems: [problem] };
}

function readSheets(folder: ContentFolder): {
  contenders: ReadonlyMap<string, Contender | null>;
  typed: ReadonlyMap<string, Block>;
  problems: readonly Problem[];
} {
  const read = folder
    .files('contenders')
    .filter((name) => /\.ya?ml$/i.test(name))
    .map((name) => {
      const file = `contenders/${name}`;
      const { content: text, problems } = folder.text(file);
      const read = text === null ? { contender: null, typed: {}, problems: [] } : readContender(file, text);
      return {
        id: name.replace(/\.ya?ml$/i, ''),
        contender: read.contender,
        typed: read.typed,
        problems: [...problems, ...read.problems],
      };
    });
  return {
    contenders: new Map(read.map(({ id, contender }) => [id, contender])),
    typed: new Map(read.map(({ id, typed }) => [id, typed])),
    problems: read.flatMap(({ problems }) => problems),
  };
}
