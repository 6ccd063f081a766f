import { expect, it } from 'vitest';
import { withDerivedColumns } from '../../../src/intake/shots/derivedColumns.ts';
import { sessionOf } from './checks/sessionOf.ts';

it('recomputes smash and face to path from their parts', () => {
  const { shots, columns } = withDerivedColumns(
    sessionOf([
      { ball_speed: 150, club_speed: 102, smash: 1.47, face_angle: 1.2, club_path: 3.1, face_to_path: -1.8 },
    ]),
  );
  expect(shots[0]?.values.smash).toBeCloseTo(150 / 102, 12);
  expect(shots[0]?.values.face_to_path).toBeCloseTo(-1.9, 12);
  expect(columns.smash?.class).toBe('derived');
});

it('keeps the value of the file where a part was not read', () => {
  const { shots } = withDerivedColumns(
    sessionOf([
      { ball_speed: 150, club_speed: null, smash: 1.47 },
      { ball_speed: null, club_speed: null, smash: null },
    ]),
  );
  expect(shots.map(({ values }) => values.smash)).toEqual([1.47, null]);
});

it('adds total spin and axis where the file has only the parts', () => {
  // 3-4-5: atan(3/4) = 36.8699 deg.
  const { shots, columns } = withDerivedColumns(sessionOf([{ back_spin: 4000, side_spin: -3000 }]));
  expect(shots[0]?.values.spin_rate).toBeCloseTo(5000, 9);
  expect(shots[0]?.values.spin_axis).toBeCloseTo(-36.8699, 4);
  expect(columns.spin_axis).toMatchObject({ class: 'derived', unit: 'deg' });
});

it('leaves measured total spin alone', () => {
  const { shots } = withDerivedColumns(sessionOf([{ spin_rate: 4990, back_spin: 4000, side_spin: 3000 }]));
  expect(shots[0]?.values.spin_rate).toBe(4990);
});

it('calls a column estimated that has one number on many shots, and what derives from it too', () => {
  const rows = [3000, 3000, 3000, 3000, 3100].map((back_spin, i) => ({
    back_spin,
    side_spin: 100 + 7 * i,
    club_speed: 100,
  }));
  const { columns } = withDerivedColumns(sessionOf(rows));
  expect(columns.club_speed?.class).toBe('estimated');
  expect(columns.back_spin?.class).toBe('estimated');
  expect(columns.spin_rate?.class).toBe('estimated');
});
