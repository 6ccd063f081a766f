import { describe, expect, test } from 'vitest';
import { plainNoun } from '../../../src/intake/authored/plainNoun.ts';
import { nounOf } from '../../../src/prose/noun.ts';

describe('what differed, as a noun for sentences', () => {
  test.each([
    ['head', 'head'],
    ['the head', 'head'],
    ['The Head', 'head'],
    ['Only the shaft.', 'shaft'],
    ['a ball', 'ball'],
    ['heads', 'head'],
    ['Golf balls', 'golf ball'],
    ['the finishes', 'finish'],
    ['faces', 'face'],
    ['the finish of the face', 'finish of the face'],
    ['shaft in one head', 'shaft in one head'],
    ['grooves', 'grooves'],
    ['Irons', 'irons'],
    ['MOI', 'MOI'],
    ['6-iron', '6-iron'],
    ['theory', 'theory'],
    ['anchor', 'anchor'],
    ['flex', 'flex'],
    ['lie angle', 'lie angle'],
    ['.', '.'],
    ['the', 'the'],
  ])('%s: %s', (answer, noun) => {
    expect(plainNoun(answer)).toBe(noun);
  });

  test('the noun of a noun is itself', () => {
    expect(plainNoun(plainNoun('The only heads'))).toBe(plainNoun('The only heads'));
  });

  test('it has a plural behind a number', () => {
    expect(nounOf(plainNoun('the finish of the face')).many).toBe('finishes of the face');
    expect(nounOf(plainNoun('The heads'))).toEqual({ one: 'head', many: 'heads' });
  });
});
