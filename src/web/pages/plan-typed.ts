/** What was typed into the form of a plan, without what was left as it was shown: a page rounds, and that is not written back. */
import { type LengthUnit, lengthText } from '../../../views/format.ts';
import { loadSnapshot } from '../../actions/index.ts';
import { type Mm, PERCENT } from '../../husbandry/units.ts';
import type { House } from './house.ts';
import { readMm } from './typed.ts';

interface Typed {
  readonly gauge: string;
  readonly chance?: number | undefined;
  readonly shareKept?: number | undefined;
}

interface Told {
  readonly gaugeMm: Mm | undefined;
  readonly chance: number | undefined;
  readonly shareKept: number | undefined;
}

export async function planTyped(
  { context }: House,
  code: string,
  { gauge, chance, shareKept, unit }: Typed & { readonly unit: LengthUnit },
): Promise<Told> {
  const plan = (await loadSnapshot(context)).changes.find((each) => each.code === code);
  const isShown = plan !== undefined && lengthText(plan.gaugeMm, unit) === gauge;
  const read = isShown ? undefined : readMm(unit)(gauge);
  return {
    gaugeMm: read?.ok ? read.value : undefined,
    chance: unlessShown(chance, plan?.chance),
    shareKept: unlessShown(shareKept, plan?.sac?.shareKept),
  };
}

const unlessShown = (typed: number | undefined, stands: number | undefined): number | undefined =>
  typed !== undefined && stands !== undefined && inWhole(typed) === inWhole(stands) ? undefined : typed;

const inWhole = (share: number): number => Math.round(share * PERCENT);
