/** Our own few signs, always beside a word: a ruler, a moon, a spider, a jar, four doors, and how full the larder is. */
import type { Verdict } from '../../src/husbandry/supply/index.ts';

export type IconName = 'ruler' | 'moon' | 'spider' | 'jar' | 'doors';

const DRAWINGS: Readonly<Record<IconName, string>> = {
  ruler: 'M2 8h20v8H2zM6 8v4M10 8v3M14 8v4M18 8v3',
  moon: 'M19 14.5A8 8 0 0 1 9.5 5a8 8 0 1 0 9.500 9.500z',
  spider:
    'M12 9a3 3 0 1 0 0 6a3 3 0 1 0 0-6M9.200 10.500L4 8V4M9 12H2.500M9.200 13.500L4 16v4M14.800 10.500L20 8V4M15 12h6.500M14.800 13.500L20 16v4',
  jar: 'M7 3h10v3H7zM7 6c-2 1-2.500 2-2.500 4v9q0 2 2 2h11q2 0 2-2v-9c0-2-.5-3-2.500-4M4.500 13h15',
  doors: 'M3 4h7v7H3zM14 4h7v7h-7zM3 14h7v6H3zM14 14h7v6h-7z',
};

export const Icon = ({ name }: { name: IconName }) => (
  <svg class="icon" viewBox="0 0 24 24" width="24" height="24" aria-hidden="true" focusable="false">
    <path d={DRAWINGS[name]} fill="none" stroke="currentColor" stroke-width="1.6" stroke-linejoin="round" />
  </svg>
);

/** Level in the jar, in units of the drawing, for each verdict. */
const JAR_LEVELS: Readonly<Record<Verdict, number>> = { lasts: 11, tight: 5, 'runs short': 1.5, empty: 0 };

/** A jar as full as the verdict: shape first, colour second; the word stands beside it. */
export const VerdictMark = ({ verdict }: { verdict: Verdict }) => {
  const level = JAR_LEVELS[verdict];
  return (
    <svg
      class={`verdict-mark is-${verdict.replace(' ', '-')}`}
      viewBox="0 0 18 22"
      width="18"
      height="22"
      aria-hidden="true"
      focusable="false"
    >
      <rect x="3" y={`${19 - level}`} width="12" height={`${level}`} class="jar-fill" />
      <path
        d="M4 1.500h10v3H4zM4 4.500Q2 6 2 8v10.500Q2 20.500 4 20.500h10q2 0 2-2V8Q16 6 14 4.500"
        class="jar-glass"
      />
    </svg>
  );
};
