/** What the numbers of a prey species must be to each other; the first that is not is a Problem that says what would be right. */
import { keyOf } from '../facts/own/book-number.ts';
import { shareKey, sizeKey, spanKey } from '../facts/own/prey-numbers.ts';
import type { ColdStore, DevelopmentSpan, PreySpecies } from '../husbandry/prey/index.ts';
import { type Problem, problem } from '../husbandry/problems.ts';
import { inPercent } from '../husbandry/units.ts';

type Found = Problem | null;
const first = (found: readonly Found[]): Found => found.find((each) => each !== null) ?? null;

/** Why a species of these numbers cannot be, or null. */
export const whyNotPrey = (species: PreySpecies): Found =>
  first([
    ...species.spans.map(wrongSpan),
    ...species.spans.map(({ code }) => wrongShares(species, code)),
    ...species.sizeClasses.value.map(wrongSize),
    species.coldStore ? wrongCold(species.coldStore) : null,
  ]);

function wrongSpan({ code, points, ...span }: DevelopmentSpan): Found {
  const [lower, optimum, upper] = [span.lowerThresholdC, span.optimumC, span.upperStopC].map(
    ({ value }) => value,
  ) as [number, number, number];
  const wrong = (name: keyof DevelopmentSpan, sentence: string) =>
    problem('ends-swapped', sentence, spanKey(code, name));
  if (lower >= optimum)
    return wrong(
      'lowerThresholdC',
      `"${lower}" °C is not below ${optimum} °C, where it grows fastest; write less.`,
    );
  if (optimum >= upper)
    return wrong(
      'upperStopC',
      `"${upper}" °C is not above ${optimum} °C, where it grows fastest; write more.`,
    );
  const temps = points.value.map(({ tempC }) => tempC);
  const [coldest, warmest] = [Math.min(...temps), Math.max(...temps)];
  if (lower >= coldest)
    return wrong(
      'lowerThresholdC',
      `"${lower}" °C is not below ${coldest} °C, where days were measured; write less.`,
    );
  if (upper <= warmest)
    return wrong(
      'upperStopC',
      `"${upper}" °C is not above ${warmest} °C, where days were measured; write more.`,
    );
  const { hardStopC } = span;
  return hardStopC && hardStopC.value >= optimum
    ? wrong(
        'hardStopC',
        `"${hardStopC.value}" °C is not below ${optimum} °C, where it grows fastest; write less.`,
      )
    : null;
}

/** Far less than a share is typed to. */
const SHARE_DUST = 1e-6;

function wrongShares({ stages }: PreySpecies, span: string): Found {
  const own = stages.filter((stage) => stage.span === span);
  const last = own.at(-1);
  const sum = own.reduce((total, { share }) => total + share, 0);
  if (last === undefined || Math.abs(sum - 1) < SHARE_DUST) return null;
  const right = inPercent(last.share + 1 - sum);
  const instead = right > 0 ? `; write ${right}` : '';
  const sentence = `"${inPercent(last.share)}" makes the stages ${inPercent(sum)} % of their time together, not 100 %${instead}.`;
  return problem('parts-do-not-sum', sentence, shareKey(last.name));
}

const wrongSize = ({ name, fromMm, toMm }: PreySpecies['sizeClasses']['value'][number]): Found =>
  fromMm < toMm
    ? null
    : problem(
        'ends-swapped',
        `"${toMm}" mm is not above ${fromMm} mm, where this size begins; write more.`,
        sizeKey(name),
      );

const wrongCold = ({ fromC, toC }: ColdStore): Found =>
  fromC.value <= toC.value
    ? null
    : problem(
        'ends-swapped',
        `"${toC.value}" °C is below ${fromC.value} °C, where cool begins; write ${fromC.value} or more.`,
        keyOf('coldStore', 'toC'),
      );
