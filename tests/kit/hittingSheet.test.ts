import { HtmlValidate } from 'html-validate';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { plannedOrder } from '../../src/intake/plan/plannedOrder.ts';
import { hittingSheet, type HittingPlan } from '../../src/kit/hittingSheet.ts';

const order = plannedOrder({
  contenders: ['Alder', 'Birch <b>&"', 'Cedar'],
  shotsEach: 4,
  turns: { kind: 'rotation' },
  seed: 'a seed',
});

const plan: HittingPlan = {
  title: 'Three heads & <one> shaft',
  date: '2026-11-25',
  varied: 'head',
  metric: 'carry',
  matters: '5 yd',
  shotsEach: 4,
  turns: 'random rotation',
  seed: 'a seed',
  warmUp: 'ten full swings',
  exclusionRule: 'only a misread',
  stoppingRule: 'after 4 shots with each',
  order: (order ?? []).map(({ shot, round, contender }) => ({ shot, round, label: contender })),
};

const html = hittingSheet(plan);
const { document } = parseHTML(html);
const text = (selector: string): string =>
  (document.querySelector(selector)?.textContent ?? '').replace(/\s+/g, ' ').trim();

describe('the hitting sheet', () => {
  test('lists every shot once, in the order of hitting, under its round, with a box to tick', () => {
    const [table] = document.querySelectorAll('.order .halves');
    const rows = [...(table?.querySelectorAll('tbody tr') ?? [])];
    const listed = rows.map((row) => {
      const [shot, label] = row.querySelectorAll('td');
      return { shot: Number(shot?.textContent), label: label?.textContent };
    });
    expect(listed).toEqual(plan.order.map(({ shot, label }) => ({ shot, label })));
    const heads = [...(table?.querySelectorAll('th[scope=rowgroup]') ?? [])];
    expect(heads.map((head) => [head.textContent, head.getAttribute('rowspan')])).toEqual(
      [1, 2, 3, 4].map((round) => [String(round), '3']),
    );
    expect(rows.every((row) => row.querySelectorAll('input[type=checkbox]').length === 1)).toBe(true);
  });

  test('has boxes for the warm-up, ten at least, and rows for shots hit again', () => {
    expect(document.querySelectorAll('.warm-up input').length).toBeGreaterThanOrEqual(10);
    const again = document.querySelectorAll('.order .halves')[1];
    expect(again?.querySelectorAll('tbody tr').length).toBeGreaterThanOrEqual(3);
  });

  test('says what was planned, and that nothing is added for its looks', () => {
    expect(text('header')).toBe(
      'Three heads & <one> shaft Hitting sheet. Planned on 25 November 2026: 4 shots with each of 3 heads, random rotation, drawn from seed a seed. Judged on carry; a gap of 5 yd matters.',
    );
    expect(text('main')).toContain(
      'The end: after 4 shots with each. Nobody adds shots because of how it looks.',
    );
    expect(text('main')).toMatch(/Stop if anything hurts/);
  });

  test('has the rules above the order, and the order in two halves where it is long', () => {
    const rules = text('.order .rules');
    expect(rules).toContain('Left out by one rule: only a misread.');
    expect(rules).toContain('The end: after 4 shots with each.');
    const tablesFor = (shots: number): (string | null | undefined)[][] => {
      const long = hittingSheet({
        ...plan,
        order: Array.from({ length: shots }, (_, index) => ({
          shot: index + 1,
          round: Math.floor(index / 2) + 1,
          label: index % 2 === 0 ? 'Alder' : 'Birch',
        })),
      });
      const [order] = parseHTML(long).document.querySelectorAll('.order .halves');
      return [...(order?.querySelectorAll('table') ?? [])].map((table) =>
        [...table.querySelectorAll('th[scope=rowgroup]')].map(({ textContent }) => textContent),
      );
    };
    expect(tablesFor(14)).toEqual([['1', '2', '3', '4', '5', '6', '7']]);
    expect(tablesFor(18)).toEqual([
      ['1', '2', '3', '4', '5'],
      ['6', '7', '8', '9'],
    ]);
  });

  test('needs no other file and runs no script', () => {
    expect(html).not.toMatch(/<script|<link|<img|url\(|https?:/);
    expect(html).toContain("default-src 'none'");
  });

  test('every box has a name of its own', () => {
    const ids = [...document.querySelectorAll('input')].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const input of document.querySelectorAll('input')) {
      const named =
        input.getAttribute('aria-label') ?? document.querySelector(`label[for="${input.id}"]`)?.textContent;
      expect(named ?? '').not.toBe('');
    }
  });

  test('is valid HTML', async () => {
    const validator = new HtmlValidate({
      extends: ['html-validate:recommended'],
      rules: { 'long-title': 'off', 'no-inline-style': 'error' },
    });
    const { results } = await validator.validateString(html);
    const wrong = results.flatMap(({ messages }) =>
      messages.map(({ ruleId, message, line }) => `${ruleId} ${line}: ${message}`),
    );
    expect(wrong).toEqual([]);
  });
});
