import { expect, test } from 'vitest';
import { text } from '../../src/intake/authored/answers.ts';
import { strict } from '../../src/intake/authored/strict.ts';
import { keyGroups } from '../../src/desk/keyGroups.ts';

const schema = strict({ place: text('place'), maker: text('maker'), day: text('day'), file: text('file') });
const group = (id: string, keys: readonly string[]) => ({ id, heading: id, keys });

test('a key that no group names is asked last in the first; one that is asked elsewhere is not', () => {
  expect(keyGroups(schema, [group('first', ['day']), group('second', ['place'])], ['file'])).toEqual([
    group('first', ['day', 'maker']),
    group('second', ['place']),
  ]);
});

test('where all are named, the groups stay as they are', () => {
  const groups = [group('first', ['day', 'maker']), group('second', ['place', 'file'])] as const;
  expect(keyGroups(schema, groups, [])).toEqual(groups);
});
