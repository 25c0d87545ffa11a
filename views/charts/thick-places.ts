/** Where a layer of a picture is thick enough to carry its name. */

interface Slab {
  readonly near: number;
  readonly far: number;
}

export const thicknessOf = ({ near, far }: Slab): number => near - far;

/** Share of the thickest place at which a layer can still be named. */
const NEARLY = 0.6;

/** The slabs at which a layer is nearly as thick as anywhere. */
export function thickOf<S extends Slab>(slabs: readonly S[]): readonly S[] {
  const thickest = Math.max(...slabs.map(thicknessOf));
  return slabs.filter((slab) => thicknessOf(slab) >= NEARLY * thickest);
}
