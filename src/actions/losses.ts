/** Prey lost from a bin, dead or thrown out: as many as it holds, or more where the keeper insists. */
import { z } from 'zod';
import type { Result } from '../husbandry/result.ts';
import type { EntryInput } from '../store/index.ts';
import { observe } from './bin-fields.ts';
import { civilDay, flag, formId, heads, someText } from './fields.ts';
import { findBin } from './find.ts';
import type { Body, Scene } from './perform.ts';
import { unlessFewer } from './taking-out.ts';

export const loss = z.strictObject({
  bin: someText,
  heads,
  day: civilDay.optional(),
  /** The keeper insists: there were more than the record says. */
  sure: flag.default(false),
  formId,
});

interface Told {
  readonly kind: Extract<EntryInput['kind'], 'found dead' | 'discarded'>;
  readonly summary: string;
}

export async function recordLoss(
  scene: Scene,
  { bin: code, heads: many, day = scene.now.today, sure }: z.output<typeof loss>,
  { kind, summary }: Told,
): Promise<Result<Body<null>>> {
  const bin = await findBin(scene.tx, code);
  if (!bin.ok) return bin;
  const there = await unlessFewer(scene, { bin: bin.value, day, heads: many, sure });
  return there.ok ? observe(scene, { day, kind, bin: code, heads: many }, summary) : there;
}
