/** How warmth paces the moult cycle. */
import type { Policy } from '../policy.ts';
import type { TempC } from '../units.ts';

/** Length of the cycle at a temperature over that at the reference: Q10^((Tref - T)/10). */
export const cycleStretch = (tempC: TempC, { moultQ10, moultReferenceC, q10StepC }: Policy): number =>
  moultQ10.value ** ((moultReferenceC.value - tempC) / q10StepC.value);
