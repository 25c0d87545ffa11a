/** What one animal's record says of its growth, its appetite and its refusals, for its page. */
import { listed, roundly } from '../../../views/format.ts';
import { type Names, preyName } from '../../../views/names.ts';
import type { AnimalPageProps } from '../../../views/pages/animal.tsx';
import type { LifeRecord } from '../../actions/index.ts';
import type { Animal } from '../../husbandry/animals/index.ts';
import {
  expectedGrowth,
  instarLadder,
  intakeOf,
  mealShares,
  nextMoult,
  type Rung,
  refusalsSeen,
} from '../../husbandry/appetite/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { type Fitting, larderNow, type StandingPrey } from '../../husbandry/supply/index.ts';
import type { Visit } from './visit.ts';

type LifeProps = Pick<AnimalPageProps, 'ladder' | 'fits' | 'appetite' | 'growth'>;

interface Known {
  readonly life: LifeRecord;
  /** What stands on the shelves. */
  readonly standing: readonly StandingPrey[];
}

/** The page's parts that rest on the whole record. */
export function lifeProps({ snapshot, names }: Visit, animal: Animal, { life, standing }: Known): LifeProps {
  const rungs = instarLadder(snapshot, animal, life);
  const larder = larderNow(snapshot, standing);
  const fitting = (rung: Rung) => fitsWords(larder.fitting(rung.rule, rung), names);
  const ahead = rungs.find(({ place }) => place === 'ahead');
  return {
    ladder: {
      rungs,
      next: nextMoult(snapshot, animal),
      larder: larder.alive,
      species: names.species,
    },
    fits: {
      now: fitting(rungs.find(({ place }) => place === 'now') as Rung),
      after: ahead === undefined ? null : fitting(ahead),
    },
    appetite: appetiteOf(snapshot, animal, { life, rungs }),
    growth: growthOf(snapshot, animal, life),
  };
}

const MOST_NAMED = 3;

/** 'about 120 house crickets and 35 banded crickets'; '' for none. */
function fitsWords(fitting: readonly Fitting[], { species }: Names): string {
  const some = fitting
    .filter(({ heads }) => heads >= 1)
    .toSorted((a, b) => b.heads - a.heads)
    .slice(0, MOST_NAMED)
    .map(({ species: code, heads }) => `${roundly(heads)} ${preyName(species, code, Math.round(heads))}`);
  return some.length === 0 ? '' : `about ${listed(some)}`;
}

interface Weighed {
  readonly life: LifeRecord;
  readonly rungs: readonly Rung[];
}

function appetiteOf(
  snapshot: Snapshot,
  animal: Animal,
  { life, rungs }: Weighed,
): AnimalPageProps['appetite'] {
  const weighing = { meals: life.meals, ladder: rungs };
  const from = snapshot.today - snapshot.facts.policy.intakeDays.value;
  return {
    from,
    meals: mealShares(snapshot, animal, weighing).filter(({ day }) => day >= from),
    intake: intakeOf(snapshot, animal, weighing),
    refusals: refusalsSeen(snapshot, animal, life.meals),
  };
}

/** Sizes on different days; one alone tells nothing of growth. */
function growthOf(
  snapshot: Snapshot,
  animal: Animal,
  { sizes, moults }: LifeRecord,
): AnimalPageProps['growth'] {
  const [from] = sizes;
  if (from === undefined || sizes.length < 2 || animal.count > 1) return null;
  return { sizes, moults, expected: expectedGrowth(snapshot, animal, { from, to: snapshot.today }) };
}
