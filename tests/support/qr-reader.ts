/** Reads QR codes of versions 1 to 4 as ISO/IEC 18004 describes them: the tests' own, apart from what draws them. */

type Modules = readonly (readonly boolean[])[];

/** Error correction codewords a block and number of blocks, by version and level. */
const BLOCKS: Readonly<Record<string, readonly (readonly [correction: number, blocks: number])[]>> = {
  L: [
    [7, 1],
    [10, 1],
    [15, 1],
    [20, 1],
  ],
  M: [
    [10, 1],
    [16, 1],
    [26, 1],
    [18, 2],
  ],
  Q: [
    [13, 1],
    [22, 1],
    [18, 2],
    [26, 2],
  ],
  H: [
    [17, 1],
    [28, 1],
    [22, 2],
    [16, 4],
  ],
};
const TOTAL = [26, 44, 70, 100];
const LEVELS = ['M', 'L', 'H', 'Q'];
const MASKS: readonly ((x: number, y: number) => number)[] = [
  (x, y) => (x + y) % 2,
  (_, y) => y % 2,
  (x) => x % 3,
  (x, y) => (x + y) % 3,
  (x, y) => (Math.floor(x / 3) + Math.floor(y / 2)) % 2,
  (x, y) => ((x * y) % 2) + ((x * y) % 3),
  (x, y) => (((x * y) % 2) + ((x * y) % 3)) % 2,
  (x, y) => (((x + y) % 2) + ((x * y) % 3)) % 2,
];
const LETTERS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';

/** The text in a code; an error says which promise of the standard it breaks. */
export function readQr(modules: Modules): string {
  const size = modules.length;
  const version = (size - 17) / 4;
  if (![1, 2, 3, 4].includes(version)) throw new Error(`version ${version} is not read here`);
  checkPatterns(modules, version);
  const { level, mask } = formatOf(modules);
  const words = codewords(modules, version, mask);
  const [correction, blocks] = BLOCKS[level]![version - 1]!;
  if (words.length !== TOTAL[version - 1]) throw new Error(`${words.length} codewords`);
  const each = words.length / blocks;
  const parts = Array.from({ length: blocks }, (_, block) => words.filter((_, at) => at % blocks === block));
  for (const part of parts) checkCorrection(part, correction);
  return textOf(parts.flatMap((part) => part.slice(0, each - correction)));
}

/** Finder patterns in three corners, timing along row and column 6, the dark module. */
function checkPatterns(modules: Modules, version: number): void {
  const last = modules.length - 7;
  for (const [left, top] of [
    [0, 0],
    [last, 0],
    [0, last],
  ] as const)
    for (let y = 0; y < 7; y += 1)
      for (let x = 0; x < 7; x += 1) {
        const ring = Math.max(Math.abs(x - 3), Math.abs(y - 3));
        if (modules[top + y]![left + x] !== (ring !== 2)) throw new Error(`finder at ${left}, ${top}`);
      }
  for (let at = 8; at < modules.length - 8; at += 1)
    if (modules[6]![at] !== (at % 2 === 0) || modules[at]![6] !== (at % 2 === 0)) throw new Error('timing');
  if (!modules[4 * version + 9]![8]) throw new Error('no dark module');
}

function formatOf(modules: Modules): { level: string; mask: number } {
  const places = [
    ...[0, 1, 2, 3, 4, 5, 7, 8].map((y) => [8, y] as const),
    ...[7, 5, 4, 3, 2, 1, 0].map((x) => [x, 8] as const),
  ];
  const bits = places.reduce((sum, [x, y], at) => sum | (Number(modules[y]![x]) << at), 0);
  const data = (bits ^ 0x5412) >> 10;
  return { level: LEVELS[data >> 3]!, mask: data & 7 };
}

/** The codewords along the zigzag, unmasked. */
function codewords(modules: Modules, version: number, mask: number): readonly number[] {
  const size = modules.length;
  const bits: number[] = [];
  for (let right = size - 1; right >= 1; right -= 2) {
    const column = right <= 6 ? right - 1 : right;
    const upward = ((size - 1 - right) / 2) % 2 === 0;
    for (let step = 0; step < size; step += 1)
      for (const x of [column, column - 1]) {
        const y = upward ? size - 1 - step : step;
        if (isFunction(x, y, version)) continue;
        bits.push(Number(modules[y]![x]) ^ Number(MASKS[mask]!(x, y) === 0));
      }
  }
  const words: number[] = [];
  for (let at = 0; at + 8 <= bits.length; at += 8)
    words.push(bits.slice(at, at + 8).reduce((sum, bit) => sum * 2 + bit, 0));
  return words.slice(0, TOTAL[version - 1]);
}

function isFunction(x: number, y: number, version: number): boolean {
  const size = 17 + 4 * version;
  const corner = (x < 9 && y < 9) || (x >= size - 8 && y < 9) || (x < 9 && y >= size - 8);
  const alignment = version > 1 && Math.abs(x - size + 7) <= 2 && Math.abs(y - size + 7) <= 2;
  return corner || alignment || x === 6 || y === 6;
}

/** Every syndrome of a block is 0 over GF(256) with 0x11D. */
function checkCorrection(block: readonly number[], correction: number): void {
  let power = 1;
  for (let i = 0; i < correction; i += 1) {
    const syndrome = block.reduce((sum, word) => times(sum, power) ^ word, 0);
    if (syndrome !== 0) throw new Error(`syndrome ${i} is ${syndrome}`);
    power = times(power, 2);
  }
}

function times(a: number, b: number): number {
  let product = 0;
  for (let bit = 7; bit >= 0; bit -= 1) {
    product = (product << 1) ^ ((product >> 7) * 0x11d);
    if ((b >> bit) & 1) product ^= a;
  }
  return product;
}

function textOf(words: readonly number[]): string {
  const bits = words.map((word) => word.toString(2).padStart(8, '0')).join('');
  let at = 0;
  const take = (length: number): number => {
    at += length;
    return Number.parseInt(bits.slice(at - length, at), 2);
  };
  const mode = take(4);
  if (mode === 4) return Buffer.from(Array.from({ length: take(8) }, () => take(8))).toString('utf8');
  if (mode !== 2) throw new Error(`mode ${mode} is not read here`);
  let text = '';
  for (let left = take(9); left > 0; left -= 2) {
    const pair = left > 1 ? take(11) : take(6);
    text += left > 1 ? `${LETTERS[Math.floor(pair / 45)]}${LETTERS[pair % 45]}` : LETTERS[pair];
  }
  return text;
}
