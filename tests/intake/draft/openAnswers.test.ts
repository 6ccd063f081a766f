import { describe, expect, test } from 'vitest';
import { openAnswers } from '../../../src/intake/draft/openAnswers.ts';

const text = `---
# The title?
title: Two heads
# Must be answered. The day?
date:
question: What goes farther?
varied: head
contenders:
  alder:
    label: Alder
    # Must be answered. Who supplied it?
    supplied_by:
    sold_here: no
  birch:
    label: Birch
    supplied_by:
    sold_here: no
# Kept the same.
held:
  shaft:
  grip: not recorded
primary: carry
session: shots.csv
hitters:
  one:
    role: staff fitter
interests:
  paid_by: the shop
  commission_or_gifts: none
  seen_before:
status: draft
---
`;

describe('open answers', () => {
  const open = openAnswers('reports/x/report.md', text);

  test('stand in the order of the file, each with line, question and whether it must be given', () => {
    expect(open.map(({ key, line, question, must }) => [line, key, question, must])).toEqual([
      [5, 'date', 'The day?', true],
      [12, 'contenders.alder.supplied_by', 'Who supplied it?', true],
      // Asked once, above the first.
      [16, 'contenders.birch.supplied_by', 'Who supplied it?', true],
      [20, 'held.shaft', 'Kept the same.', false],
      // No line for it yet: named at the block it belongs to.
      [25, 'hitters.one.consent', 'yes, or yes and the day: yes, 2026-04-11', true],
      [
        30,
        'interests.seen_before',
        'who outside the shop saw the report, or had a say in it, before it was published; "nobody" if so',
        true,
      ],
    ]);
  });

  test('of what cannot be read are none: its errors say why', () => {
    expect(openAnswers('reports/x/report.md', 'no dashes')).toEqual([]);
    expect(openAnswers('reports/x/report.md', '---\ntitle: "x\n---\n')).toEqual([]);
  });
});
