/** What is left after the last period is worth: what it will save, up to what will still be wanted. */
import type { Cents } from '../orders/index.ts';
import type { EaterLaid, Living } from './living.ts';
import type { PlanEater } from './problem.ts';

/** Handed to those who will want it, the dearest first; what is handed out is taken from `there`. */
export function leftWorth({ problem, eaters, endOrder }: Living, there: Float64Array): Cents {
  let value = 0;
  for (const e of endOrder) {
    const { endWanted, endCents: each } = problem.eaters[e] as PlanEater;
    const { node, items } = eaters[e] as EaterLaid;
    let wants = endWanted;
    for (let k = 0; k < node.length && wants > 0 && each > 0; k++) {
      const heads = there[node[k] as number] as number;
      const taken = Math.min(heads, wants / (items[k] as number));
      there[node[k] as number] = heads - taken;
      wants -= taken * (items[k] as number);
      value += each * (items[k] as number) * taken;
    }
  }
  return value;
}
