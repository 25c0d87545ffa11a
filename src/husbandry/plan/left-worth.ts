/** What is left after the last period is worth: what it will save, up to what will still be wanted while it lasts. */
import type { Cents } from '../orders/index.ts';
import type { EaterLaid, Living } from './living.ts';
import type { PlanEater } from './problem.ts';

/**
 * Handed to those who will want it, the dearest first, to each what lasts least first (the earliest deadline, which
 * misses fewest); what is handed out is taken from `there`.
 */
export function leftWorth({ problem, eaters, endOrder }: Living, there: Float64Array): Cents {
  let value = 0;
  for (const e of endOrder) {
    const { cents, weekly } = (problem.eaters[e] as PlanEater).end;
    const { node, items, span, until } = (eaters[e] as EaterLaid).end;
    let given = 0;
    for (let k = 0; k < node.length; k++) {
      const n = node[k] as number;
      const heads = there[n] as number;
      const most = Math.min(weekly * (span[k] as number), weekly * (until[k] as number) - given);
      if (heads <= 0 || most <= 0) continue;
      const taken = Math.min(heads, most / (items[k] as number));
      there[n] = heads - taken;
      given += taken * (items[k] as number);
    }
    value += given * cents;
  }
  return value;
}
