import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { planAtDesk } from '../../src/commands/desk/planAtDesk.ts';
import { contentFolder, shop } from '../commands/contentFolder.ts';
import { failingDisk, Killed, type Failure } from '../commands/failingDisk.ts';
import { filesIn, leftovers, planned } from '../commands/writingScenarios.ts';

const answers = { contender: ['Alder', 'Birch'], varied: 'head', club: 'driver', shots: '12', slug: 'two' };
const clock = { today: '2026-05-09', time: '09:00' };

/** Every so many steps; the command that writes the same is tried at each of them. */
const stride = 4;

test.each<Failure>(['killed', 'full', 'faulty'])(
  'a plan of the desk is there whole or not at all, %s at any step',
  async (failure) => {
    const whole = contentFolder({ 'shop.yaml': shop });
    const counted = failingDisk(Infinity, failure);
    expect(await planAtDesk(whole, answers, clock, counted.disk)).toEqual({ kind: 'recorded', slug: 'two' });
    expect(counted.steps()).toBeGreaterThan(30);
    for (let step = 1; step <= counted.steps(); step += stride) {
      const content = contentFolder({ 'shop.yaml': shop });
      const { disk } = failingDisk(step, failure);
      const where = `${failure} at step ${step}`;
      try {
        const recorded = await planAtDesk(content, answers, clock, disk);
        expect(failure, where).not.toBe('killed');
        if (recorded.kind === 'not-written') expect(recorded.why, where).toMatch(/\((?:ENOSPC|EIO)\)/);
        expect(leftovers(content), where).toEqual([]);
      } catch (error) {
        if (!(error instanceof Killed)) throw error;
      }
      expect(readFileSync(join(content, 'shop.yaml'), 'utf8')).toBe(shop);
      // Whoever sends the form again has it, under that name or, where it is there already, is told so.
      const again = await planAtDesk(content, answers, clock);
      expect(['recorded', 'refused'], where).toContain(again.kind);
      expect(planned(content), where).toEqual(['two']);
      expect(readdirSync(join(content, 'reports')), where).toEqual(['two']);
      expect(Object.keys(filesIn(content)), where).toEqual(Object.keys(filesIn(whole)));
      expect(leftovers(content), where).toEqual([]);
    }
  },
  120_000,
);
