/** A QR code of an address, drawn as one path. */
import { encode } from 'uqr';

/** White around the code, in modules, as the standard asks. */
const QUIET = 4;

/**
 * Rows of modules, true for black. Scheme and host read the same in capitals, and so do the short addresses of labels;
 * written with no other signs they take less room.
 */
export function qrOf(address: string): readonly (readonly boolean[])[] {
  const capitals = address.toUpperCase();
  return encode(IN_CAPITALS.test(capitals) ? capitals : address, OPTIONS).data;
}

const OPTIONS = { ecc: 'M', border: 0 } as const;
/** Signs of the standard's alphanumeric mode. */
const IN_CAPITALS = /^[0-9A-Z $%*+\-./:]+$/;

export const Qr = ({ address }: { address: string }) => {
  const rows = qrOf(address);
  const size = rows.length + 2 * QUIET;
  return (
    <svg
      class="qr"
      viewBox={`${-QUIET} ${-QUIET} ${size} ${size}`}
      shape-rendering="crispEdges"
      aria-hidden="true"
      focusable="false"
    >
      <path d={rows.map(rowPath).join('')} fill="#000" />
    </svg>
  );
};

/** Each run of black modules as a box one module high. */
function rowPath(row: readonly boolean[], y: number): string {
  let path = '';
  for (let x = 0; x < row.length; x += 1) {
    if (!row[x]) continue;
    const from = x;
    while (row[x + 1]) x += 1;
    const run = x - from + 1;
    path += `M${from} ${y}h${run}v1h-${run}z`;
  }
  return path;
}
