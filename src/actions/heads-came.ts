/** How many heads of a line came alive: counted whole or in part, weighed with a sample or by the Book, or as on the label. */
import { z } from 'zod';
import {
  type HeadsEstimate,
  headMassBetween,
  headsByMass,
  headsByPart,
  headsBySample,
} from '../husbandry/orders/index.ts';
import { problem } from '../husbandry/problems.ts';
import { err, ok, type Result } from '../husbandry/result.ts';
import type { Facts } from '../husbandry/snapshot.ts';
import type { Mm } from '../husbandry/units.ts';
import type { EntryDetails } from '../store/index.ts';
import { chance, heads, headsOrNone, massMg } from './fields.ts';

/** Of the living, the dead taken out. */
export const headsCame = z.discriminatedUnion('how', [
  z.strictObject({ how: z.literal('label') }),
  z.strictObject({ how: z.literal('whole'), alive: headsOrNone }),
  z.strictObject({ how: z.literal('part'), heads, share: chance }),
  z.strictObject({ how: z.literal('sample'), heads, massMg, allMg: massMg }),
  z.strictObject({ how: z.literal('weighed'), allMg: massMg }),
]);
export type HeadsCame = z.output<typeof headsCame>;

export interface Box {
  readonly facts: Facts;
  readonly species: string;
  readonly fromMm: Mm;
  readonly toMm: Mm;
  /** Heads on the label, with what this seller usually adds. */
  readonly onLabel: number;
  readonly dead: number;
}

export interface Came {
  readonly alive: number;
  readonly counted: NonNullable<EntryDetails['counted']>;
  /** Standard error of the heads where they were not counted one by one. */
  readonly give: number | null;
}

export function aliveOf(came: HeadsCame, box: Box): Result<Came> {
  if (came.how === 'label')
    return ok({ alive: Math.max(0, Math.round(box.onLabel) - box.dead), counted: 'label', give: null });
  if (came.how === 'whole') return ok({ alive: came.alive, counted: 'whole', give: null });
  const estimate = estimateOf(came, box);
  if (!estimate.ok) return estimate;
  const { heads: many, standardError } = estimate.value;
  return ok({ alive: Math.round(many), counted: came.how, give: Math.round(standardError) });
}

type Reckoned = Extract<HeadsCame, { how: 'part' | 'sample' | 'weighed' }>;

function estimateOf(came: Reckoned, { facts, species, ...lengths }: Box): Result<HeadsEstimate> {
  const { policy } = facts;
  if (came.how === 'part')
    return came.share > 0
      ? ok(headsByPart(came.heads, came.share))
      : err(problem('no-share', '"0" is no part of the box; say which share of it was counted.', 'share'));
  const perCubicMm = facts.species.get(species)?.massPerCubicMm.value ?? 0;
  const { meanMg, cv } = headMassBetween(lengths, perCubicMm);
  if (came.how === 'weighed') return ok(headsByMass(came.allMg, meanMg, policy.weighCv.value));
  if (came.massMg <= 0)
    return err(
      problem('no-mass', '"0" is no weight for a sample; leave it out if it was not weighed.', 'massMg'),
    );
  if (came.massMg > came.allMg)
    return err(problem('sample-heavier', 'The sample weighs more than the whole box.', 'massMg'));
  return ok(headsBySample(came, { headCv: cv, scaleCv: policy.scaleCv.value }));
}
