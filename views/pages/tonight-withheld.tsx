/** Who must not be fed, shelf by shelf, with the reason and what is worth a look. */
import type { Evening } from '../../src/husbandry/appetite/index.ts';
import type { Shell } from '../layout.tsx';
import { type Names, nameOf } from '../names.ts';
import { paths } from '../paths.ts';
import { byShelf } from './tonight-shelf.tsx';

interface WithheldProps {
  readonly shell: Pick<Shell, 'today'>;
  readonly evening: Pick<Evening, 'day' | 'withheld'>;
  readonly names: Names;
}

export const Withheld = ({ shell, evening, names }: WithheldProps) =>
  evening.withheld.length === 0 ? null : (
    <section class="withheld" aria-labelledby="withheld">
      <h2 id="withheld">
        {evening.day < shell.today ? 'Not to be fed that evening' : 'Not to be fed tonight'}
      </h2>
      {byShelf(evening.withheld).map(([shelf, rows]) => (
        <>
          <h3>{shelf}</h3>
          <ul>
            {rows.map(({ animal, reason, look }) => (
              <li>
                <a href={paths.animal(animal)} class="line">
                  <span>
                    <b>{nameOf(names.animals, animal)}</b>: {reason}
                  </span>
                </a>
                {look === null ? null : <strong class="look-at"> {look}</strong>}
              </li>
            ))}
          </ul>
        </>
      ))}
    </section>
  );
