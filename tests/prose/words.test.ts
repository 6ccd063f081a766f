import { describe, expect, test } from 'vitest';
import { dateInWords } from '../../src/prose/date.ts';
import { nounOf } from '../../src/prose/noun.ts';
import { shotsEach } from '../../src/prose/english/order.ts';
import { capitalised, counted, countWord, listed, placeInRow, sentence } from '../../src/prose/words.ts';

describe('counts', () => {
  test.each([
    [0, 'no shots'],
    [1, 'one shot'],
    [2, 'two shots'],
    [9, 'nine shots'],
    [10, '10 shots'],
    [36, '36 shots'],
  ])('%i', (count, words) => {
    expect(counted(count, 'shot')).toBe(words);
  });

  test('plurals of their own', () => {
    expect(counted(2, 'way', 'ways')).toBe('two ways');
    expect(countWord(6)).toBe('six');
  });

  test.each([
    [[12, 12, 12], '12 shots with each head'],
    [[5, 5], 'five shots with each head'],
    [[1, 1], 'one shot with each head'],
    [[8, 12, 9], '8 to 12 shots with each head'],
    [[4, 7], 'four to seven shots with each head'],
  ])('%j with each', (counts, words) => {
    expect(shotsEach(counts, 'head')).toBe(words);
  });
});

describe('lists', () => {
  test.each([
    [[], ''],
    [['Alder'], 'Alder'],
    [['Alder', 'Birch'], 'Alder and Birch'],
    [['Alder', 'Birch', 'Cedar'], 'Alder, Birch and Cedar'],
  ])('%j', (items, words) => {
    expect(listed(items)).toBe(words);
  });

  test('joined otherwise', () => {
    expect(listed(['Alder', 'Birch', 'Cedar'], 'or')).toBe('Alder, Birch or Cedar');
  });
});

describe('sentences', () => {
  test.each([
    ['alder went', 'Alder went.'],
    ['Alder went.', 'Alder went.'],
    ['why?', 'Why?'],
    ['  done!  ', 'Done!'],
    ['élan', 'Élan.'],
    ['"so it went"', '"so it went".'],
    ['7 Iron, #2', '7 Iron, #2.'],
  ])('%s', (text, words) => {
    expect(sentence(text)).toBe(words);
  });

  test('a name written small keeps its letters', () => {
    expect(capitalised('e9 head')).toBe('E9 head');
  });
});

describe('places in a row', () => {
  test.each([
    [0, 2, 'first'],
    [1, 2, 'last'],
    [1, 3, 'second'],
    [2, 3, 'last'],
    [3, 6, 'fourth'],
    [5, 6, 'last'],
    [0, 1, 'first'],
  ])('%i of %i', (index, length, word) => {
    expect(placeInRow(index, length)).toBe(word);
  });
});

describe('the noun of what was varied', () => {
  test.each([
    ['head', 'head', 'heads'],
    ['ball', 'ball', 'balls'],
    ['grooves', 'set of grooves', 'grooves'],
    ['flex', 'flex', 'flexes'],
    ['brand of ball', 'brand of ball', 'brands of ball'],
    ['assembly', 'assembly', 'assemblies'],
    ['lie angle', 'lie angle', 'lie angles'],
    ['loft setting', 'loft setting', 'loft settings'],
    ['shaft in one head', 'shaft in one head', 'shafts in one head'],
    [' wedge ', 'wedge', 'wedges'],
    ['grass', 'grass', 'grasses'],
  ])('%s', (varied, one, many) => {
    expect(nounOf(varied)).toEqual({ one, many });
  });
});

test.each([
  ['2026-04-11', '11 April 2026'],
  ['2000-01-01', '1 January 2000'],
  ['2026-12-31', '31 December 2026'],
])('the day %s', (iso, words) => {
  expect(dateInWords(iso)).toBe(words);
});
