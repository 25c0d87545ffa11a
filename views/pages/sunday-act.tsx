/** The one act that helps most, with what it changes, and where it is done. */
import type { Act } from '../../src/husbandry/supply/index.ts';
import { expected, weeksIn } from '../format.ts';
import { paths } from '../paths.ts';

/** Where the act is done; an act that changes tonight's offers is done in the round. */
function placeOf({ kind, bin }: Act): { href: string; label: string } {
  if (kind === 'cut prey' || kind === 'stretch adults') return { href: paths.tonight, label: 'To the round' };
  if (kind === 'start a cup') return { href: paths.newBin, label: 'Add the cup' };
  if (kind === 'bring delivery forward' || kind === 'enlarge delivery')
    return { href: `${paths.larder}#deliveries`, label: 'To the deliveries' };
  if (bin !== null) return { href: paths.bin(bin), label: 'To the bin' };
  return { href: `${paths.larder}#deliveries`, label: 'To the deliveries' };
}

interface ActHereProps {
  readonly act: Act | null;
  /** Whether it has been looked for. */
  readonly sought: boolean;
  /** Whether nothing needs to be done. */
  readonly settled: boolean;
}

/** The act that helps most; nothing when none does, a promise while it is looked for. */
export const ActHere = ({ act, sought, settled }: ActHereProps) => {
  if (!sought) return <ActSoon />;
  if (act === null) return settled ? null : <NoAct />;
  const { href, label } = placeOf(act);
  return (
    <section class="act" aria-labelledby="act">
      <h2 id="act">Do this</h2>
      <p>{act.sentence}</p>
      <dl class="before-after">
        <Changed
          what="Nobody misses"
          before={weeksIn(act.before.nothingMissed)}
          after={weeksIn(act.after.nothingMissed)}
        />
        <Changed what="In danger" before={expected(act.before.dangers)} after={expected(act.after.dangers)} />
        <Changed
          what="Meals missed"
          before={expected(act.before.missedMeals)}
          after={expected(act.after.missedMeals)}
        />
      </dl>
      <a class="button act-here" href={href}>
        {label}
      </a>
    </section>
  );
};

const NoAct = () => (
  <section class="act" aria-labelledby="act">
    <h2 id="act">Do this</h2>
    <p>No single act tried here helps. Look at the lengths that are missing below.</p>
  </section>
);

/** Trying every act takes a few seconds where much runs short: it comes after the page. */
const ActSoon = () => (
  <section
    class="act"
    aria-labelledby="act"
    aria-live="polite"
    data-hx-get={paths.act}
    data-hx-trigger="load"
    data-hx-swap="outerHTML"
  >
    <h2 id="act">Do this</h2>
    <p>Trying what would help most …</p>
    <a class="button quiet" href={`${paths.sunday}?act=1`}>
      Wait for it
    </a>
  </section>
);

/** What an act changes; what stays the same in words is left out. */
const Changed = ({ what, before, after }: { what: string; before: string; after: string }) =>
  before === after ? null : (
    <div>
      <dt>{what}</dt>
      <dd>
        <span class="unseen">now </span>
        {before} <span aria-hidden="true">→</span>
        <span class="unseen">, then </span> <b>{after}</b>
      </dd>
    </div>
  );
