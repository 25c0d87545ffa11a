/** What the evening used, what the bins hold now, and which to count. */
import type { UsedBin } from '../../src/husbandry/supply/index.ts';
import { aboutHeads, roundly } from '../format.ts';
import { type Names, nameOf, preyName } from '../names.ts';
import { paths } from '../paths.ts';

interface UsedProps {
  readonly used: readonly UsedBin[];
  readonly names: Names;
}

export const Used = ({ used, names }: UsedProps) =>
  used.length === 0 ? null : (
    <section class="used" aria-labelledby="used">
      <h2 id="used">Used {usedWords(used, names)}</h2>
      <ul>
        {used.map((bin) => (
          <li>
            <BinLeft {...bin} name={nameOf(names.bins, bin.bin)} />
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
  return parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

type Left = UsedBin & { readonly name: string };

const BinLeft = ({ bin, name, fed, before, now, short, ask }: Left) => {
  if (short)
    return (
      <>
        Fed {fed} out of {name}, which was thought to hold {before < 1 ? 'none' : `about ${roundly(before)}`}.
        The meals are kept; <a href={paths.bin(bin)}>count {name}</a>.
      </>
    );
  return (
    <>
      {name} now holds {aboutHeads(now)}
      {ask ? (
        <>
          : <a href={paths.bin(bin)}>count it?</a>
        </>
      ) : (
        '.'
      )}
    </>
  );
};
