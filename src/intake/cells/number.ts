/** Numbers as keepers write them: decimal point or comma, thousands, "1k", fractions. */

const DECIMAL = /^\d+(?:[.,]\d+)?$|^[.,]\d+$/;
const MIXED = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/;
const GROUPED = /^\d{1,3}(?:[.,' ]\d{3})+$/;
const THOUSAND = 1000;

/** A decimal number with point or comma, or null. */
export const readDecimal = (text: string): number | null =>
  DECIMAL.test(text) ? Number(text.replace(',', '.')) : null;

/** A decimal, a fraction or a whole with a fraction ("1 1/2"), or null. */
export function readAmount(text: string): number | null {
  const [, whole = '0', top, bottom] = MIXED.exec(text) ?? [];
  if (top === undefined) return readDecimal(text);
  const amount = Number(whole) + Number(top) / Number(bottom);
  return Number.isFinite(amount) ? amount : null;
}

/** A whole number, with thousands parted ("1,200") or short ("1.5k"), or null. */
export function readWhole(text: string): number | null {
  if (GROUPED.test(text)) return Number(text.replace(/[.,' ]/g, ''));
  const thousands = /^(.+?)\s*k$/i.exec(text);
  const plain = readDecimal(thousands ? (thousands[1] ?? '') : text);
  if (plain === null) return null;
  const number = thousands ? Math.round(plain * THOUSAND) : plain;
  return Number.isSafeInteger(number) ? number : null;
}
