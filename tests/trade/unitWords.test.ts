import { describe, expect, it } from 'vitest';
import { isUnreadUnit, unitNamed, unitWords } from '../../src/trade/unitWords.ts';

describe('words for units', () => {
  it('name one unit each, whatever their casing', () => {
    for (const [unit, words] of Object.entries(unitWords)) {
      for (const word of words) {
        expect(unitNamed(word), word).toBe(unit);
        expect(unitNamed(` ${word.toUpperCase()}. `), word).toBe(unit);
      }
    }
  });

  it('that are known but not read name none', () => {
    for (const word of ['ft/s', 'feet per second', 'knots', 'rad', 'rev/s', 'kilometres', 'miles', 'krpm']) {
      expect(unitNamed(word), word).toBeNull();
      expect(isUnreadUnit(word), word).toBe(true);
    }
  });

  it('are whole words', () => {
    expect(unitNamed('yard line')).toBeNull();
    expect(unitNamed('')).toBeNull();
    expect(unitNamed('constructor')).toBeNull();
  });
});
