/** `check` does what the plan says, as the Sunday page does. */
import { describe, expect, it } from 'vitest';
import { addAnimal } from '../../src/actions/index.ts';
import type { StepTold } from '../../src/cli/checked.ts';
import type { CoverAnswer } from '../../src/husbandry/supply/index.ts';
import type { Terminal } from '../support/command.ts';
import { onDatabase } from '../support/on-database.ts';
import { plannedTerminal } from '../support/planned-terminal.ts';
import { good } from '../support/store-at.ts';

type Printed = CoverAnswer & { readonly plan: readonly StepTold[] };

const HEADING = 'What the plan asks for before the next Sunday:';
const SHORT = 'What helps most: ';

const printed = async (at: Terminal, ...words: string[]): Promise<Printed> =>
  JSON.parse((await at.type('check', '--json', ...words)).out) as Printed;

describe('with a plan of the room as it is', () => {
  it('the steps due before the next Sunday are said with their reasons, and no act is looked for', async () => {
    const at = await plannedTerminal({ crickets: 0, transitDays: 2 });
    const { exit, out } = await at.type('check');
    expect(exit).toBe(1);
    expect(out).not.toContain(SHORT);
    const [step, why] = out.slice(out.indexOf(HEADING)).split('\n').slice(1);
    expect(step).toMatch(/^ {2}Order \d00 house crickets from Grille & Co, by \w+day\.$/);
    expect(why).toMatch(/^ {4}Feeds tarantula spiderlings from .* Without it: .*\.$/);
    const { act, plan } = await printed(at);
    expect(act).toBeNull();
    expect(plan[0]).toMatchObject({ what: 'order', bin: null, species: 'acheta-domesticus' });
    expect(`  ${plan[0]!.sentence}`).toBe(step);
    expect(`    ${plan[0]!.why}`).toBe(why);
    expect(plan.every(({ by }) => by >= '2026-11-29' && by < '2026-12-06')).toBe(true);
  });

  it('they are said where the feeders last, too', async () => {
    const { exit, out } = await (await plannedTerminal({ crickets: 400, transitDays: 14 })).type('check');
    expect(exit).toBe(0);
    expect(out).toContain(`The feeders last the week.`);
    expect(out).toContain(HEADING);
  });

  it('what helps most comes first where its steps feed too late those who run short', async () => {
    const at = await plannedTerminal({ crickets: 0, transitDays: 14 });
    const { out } = await at.type('check');
    expect(out).toContain(SHORT);
    expect(out).not.toContain(HEADING);
    expect((await printed(at)).plan).toEqual([]);
  });

  it('it does not speak for another day, horizon or seed', async () => {
    const at = await plannedTerminal({ crickets: 0, transitDays: 2 });
    for (const words of [
      ['--date', '2026-11-30'],
      ['--days', '5'],
      ['--seed', '3'],
    ]) {
      const { act, plan } = await printed(at, ...words);
      expect([plan, act?.kind]).toEqual([[], 'buy at a shop']);
    }
    expect((await printed(at, '--date', '2026-11-29')).plan).toHaveLength(1);
  });

  it('nor for the room after a change', async () => {
    const at = await plannedTerminal({ crickets: 0, transitDays: 2 });
    await onDatabase(at, async (context) => {
      good(
        await addAnimal(context, { name: 'Newcomer', kind: 'brachypelma-hamorii', room: 'R1', gaugeMm: 30 }),
      );
    });
    expect((await at.type('check')).out).toContain(SHORT);
  });
});
