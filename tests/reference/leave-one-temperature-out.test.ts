/**
 * How far the rate law misses a published duration that it is not given, for every span with four or more published
 * temperatures: Kong et al. 2025 for Gryllodes sigillatus, PRATIQUE and Ashburner and Thompson 1978 for Drosophila
 * melanogaster, Heidari Parsa et al. 2023 for Tenebrio molitor. The errors are pinned as they are, not made small. Those
 * of the fly are small because its durations come from degree-day lines.
 */
import { expect, it } from 'vitest';
import { policy } from '../../src/facts/policy.ts';
import { preySpecies } from '../../src/facts/prey/index.ts';
import { leaveOneOut } from '../../src/husbandry/prey/leave-one-out.ts';

const everyLeft = preySpecies.flatMap((species) =>
  leaveOneOut(species, policy.leaveOneOutPoints.value).map((left) => ({ species: species.name, ...left })),
);

/** 'Species, span, temperature: error in percent to three digits'. */
const rowsOf = (lefts: readonly (typeof everyLeft)[number][]): string[] =>
  lefts.map(
    ({ species, span, tempC, error }) =>
      `${species}, ${span}, ${tempC} C: ${Number((100 * error).toPrecision(3))} %`,
  );

it('misses a temperature between others by so much', () => {
  expect(rowsOf(everyLeft.filter(({ isEnd }) => !isEnd))).toEqual([
    'Gryllodes sigillatus, nymph, 26 C: 1.38 %',
    'Gryllodes sigillatus, nymph, 30 C: -0.185 %',
    'Gryllodes sigillatus, nymph, 32 C: 3.36 %',
    'Gryllodes sigillatus, nymph, 36 C: -4.52 %',
    'Drosophila melanogaster, egg to adult, 20 C: -0.406 %',
    'Drosophila melanogaster, egg to adult, 25 C: 0.0834 %',
    'Drosophila melanogaster, egg to adult, 28 C: -0.565 %',
    'Tenebrio molitor, hatch to adult, 23 C: -5.16 %',
    'Tenebrio molitor, hatch to adult, 25 C: -6.17 %',
  ]);
});

it('misses the coldest and the warmest, which lie beyond the others, by so much', () => {
  expect(rowsOf(everyLeft.filter(({ isEnd }) => isEnd))).toEqual([
    'Gryllodes sigillatus, nymph, 24 C: -7.28 %',
    'Gryllodes sigillatus, nymph, 38 C: 78.4 %',
    'Drosophila melanogaster, egg to adult, 18 C: 0.895 %',
    'Drosophila melanogaster, egg to adult, 30 C: 46.4 %',
    'Tenebrio molitor, hatch to adult, 20 C: 15.8 %',
    'Tenebrio molitor, hatch to adult, 27 C: 11.3 %',
  ]);
});

it('has the given days and the days foretold in one row', () => {
  for (const { days, foretoldDays, error } of everyLeft)
    expect(foretoldDays / days - 1).toBeCloseTo(error, 12);
});

it('foretells a point that lies on the line of its span exactly', () => {
  const gryllus = preySpecies.find(({ code }) => code === 'gryllus-bimaculatus')!;
  const [egg] = gryllus.spans;
  const onLine = [20, 22, 24, 26].map((tempC) => ({ tempC, days: 108.7 / (tempC - 15.9) }));
  const spans = [{ ...egg!, points: { ...egg!.points, value: onLine } }];
  const lefts = leaveOneOut({ ...gryllus, spans }, 4);
  expect(lefts.map(({ isEnd }) => isEnd)).toEqual([true, false, false, true]);
  for (const { error } of lefts) expect(error).toBeCloseTo(0, 12);
  expect(leaveOneOut({ ...gryllus, spans }, 5)).toEqual([]);
});
