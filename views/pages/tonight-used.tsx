/** What the evening used, what the bins hold now, and which to count. */
import type { UsedBin } from '../../src/husbandry/supply/index.ts';
import { aboutHeads, listed, roundly } from '../format.ts';
import { type Names, nameOf, preyName } from '../names.ts';
import { paths } from '../paths.ts';

interface UsedProps {
  readonly used: readonly UsedBin[];
  readonly names: Names;
}

/** Bins out of which more was fed than they were thought to hold. */
export const Doubted = ({ used, names }: UsedProps) => (
  <>
    {used
      .filter(({ short }) => short)
      .map(({ bin, fed, before }) => (
        <p class="doubted">
          Fed {fed} out of {nameOf(names.bins, bin)}, which was thought to hold{' '}
          {before < 1 ? 'none' : `about ${roundly(before)}`}. The meals are kept;{' '}
          <a href={paths.bin(bin)}>count {nameOf(names.bins, bin)}</a>.
        </p>
      ))}
  </>
);

export const Used = ({ used, names }: UsedProps) =>
  used.length === 0 ? null : (
    <section class="used" aria-labelledby="used">
      <h2 id="used">Used {usedWords(used, names)}</h2>
      <ul>
        {used
          .filter(({ short }) => !short)
          .map(({ bin, now, ask }) => (
            <li>
              {ask ? (
                <a href={paths.bin(bin)} class="line">
                  <span>
                    {nameOf(names.bins, bin)} now holds {aboutHeads(now)}: <b>count it?</b>
                  </span>
                </a>
              ) : (
                `${nameOf(names.bins, bin)} now holds ${aboutHeads(now)}.`
              )}
            </li>
          ))}
      </ul>
    </section>
  );

/** '212 house crickets and 40 large fruit flies'. */
function usedWords(used: readonly UsedBin[], names: Names): string {
  const bySpecies = new Map<string, number>();
  for (const { species, fed } of used) bySpecies.set(species, (bySpecies.get(species) ?? 0) + fed);
  const parts = [...bySpecies].map(
    ([species, heads]) => `${heads} ${preyName(names.species, species, heads)}`,
  );
  return listed(parts);
}
