import { describe, expect, test } from 'vitest';
import { readShop } from '../../src/intake/authored/readShop.ts';
import { exportedPictures } from '../../src/kit/exportForms.ts';

const names = (choices: string, leads: boolean, own: 'yards' | 'metres' = 'yards'): readonly string[] => {
  const { shop, problems } = readShop('shop.yaml', `name: Shop\n${choices}`);
  expect(problems).toEqual([]);
  if (shop === null) throw new Error('no shop');
  return exportedPictures('apart', { own, choices: shop.exports, leads }).map(({ name }) => name);
};

describe('the pictures of a chart that are given away', () => {
  test.each([
    ['', false, ['apart']],
    ['', true, ['apart', 'apart-phone']],
    ['exports: phone\n', false, ['apart', 'apart-phone']],
    ['exports: [square, upright, video, print]\n', false, ['apart']],
    [
      'exports: [square, upright, video, print]\n',
      true,
      [
        'apart',
        'apart-phone',
        'apart-square',
        'apart-upright',
        'apart-video',
        'apart-lower-third',
        'apart-print',
      ],
    ],
    [
      'exports: [phone, other-units]\n',
      false,
      ['apart', 'apart-phone', 'apart-in-metres', 'apart-in-metres-phone'],
    ],
  ])('%j, where it leads: %j', (choices, leads, expected) => {
    expect(names(choices, leads)).toEqual(expected);
  });

  test('are named by the units only where those are not the shop’s', () => {
    expect(names('exports: other-units\n', false, 'metres')).toEqual(['apart', 'apart-in-yards']);
  });

  test('are named alike by no two forms', () => {
    const all = names('exports: [phone, other-units, square, upright, video, print]\n', true);
    expect(new Set(all).size).toBe(14);
    expect(all).toHaveLength(14);
  });

  test('that there are not, are an error with the nearest name', () => {
    const { problems } = readShop('shop.yaml', 'name: Shop\nexports: [sqare]\n');
    expect(problems).toMatchObject([{ kind: 'value-invalid', line: 2, cure: 'Did you mean "square"?' }]);
  });
});
