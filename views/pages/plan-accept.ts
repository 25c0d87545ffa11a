/** What takes a line of the plan up: the word on it, and the form it leads to. */
import { civilDate } from '../../src/husbandry/calendar.ts';
import type { PlanLine } from '../../src/husbandry/plan/index.ts';
import { paths } from '../paths.ts';
import type { PlanTold } from './plan.tsx';
import { isOrder } from './plan-words.ts';

export const ACCEPT = {
  order: 'Order it',
  harvest: 'Harvest it',
  cull: 'Cull them',
  start: 'Start it',
  rest: 'Leave it alone',
} as const;

/** The form in which the line is done, filled in. */
export function acceptAt(line: PlanLine, told: PlanTold): string {
  const heads = `${line.heads}`;
  switch (line.what) {
    case 'order':
      return parcelAt(line, told);
    case 'harvest':
      return paths.beginBinAct(line.bin, 'harvest', { heads, ...told.sizeField('sizeClass', line) });
    case 'cull':
      return paths.beginBinAct(line.bin, 'cull', { heads, ...told.sizeField('size', line) });
    case 'start':
      return paths.newCup(line.species);
    case 'rest':
      return paths.beginBinAct(line.bin, 'rest', { days: `${line.until - told.today}` });
  }
}

/** The order form with the whole parcel: its lines share the postage. */
function parcelAt(line: Extract<PlanLine, { what: 'order' }>, { plan }: PlanTold): string {
  const parcel = plan.lines.filter(isOrder).filter(({ parcel: code }) => code === line.parcel);
  return paths.newOrderOf({
    supplier: line.supplier,
    sent: civilDate(line.sent),
    packs: new Map(parcel.map(({ offer, packs }) => [offer, packs])),
  });
}
