/** The page of sacs: each that is expected with its wave, and those that are over. */

import type { Context } from 'hono';
import { recordDay, sentenceCase } from '../../../views/format.ts';
import { kindNameOf } from '../../../views/names.ts';
import { SacsPage, type SacsProps, type SacView } from '../../../views/pages/sacs.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { sacOf } from '../../../views/sac-words.ts';
import { sacComesOff } from '../../facts/sacs.ts';
import { type Animal, ruleOf } from '../../husbandry/animals/index.ts';
import type { PlannedChange, Snapshot } from '../../husbandry/snapshot.ts';
import { hatchWave, youngPrey } from '../../husbandry/supply/index.ts';
import type { House } from './house.ts';
import { isAhead } from './settings.ts';
import { sacLines } from './sources.ts';
import { page, statusOf, type Visit, visit } from './visit.ts';

export async function showSacs(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const here = await visit(house, c, { refused });
  const { snapshot, names } = here;
  const sacs = snapshot.changes.filter(({ kind }) => kind === 'sac');
  const open = sacs.filter(isAhead).toSorted((a, b) => a.from - b.from);
  const props: SacsProps = {
    ...here,
    open: open.map((change) => viewOf(here, change)),
    past: sacs
      .filter((change) => !isAhead(change))
      .map((change) => ({ code: change.code, sentence: pastWords(here, change) })),
    mothers: mothersIn(snapshot)
      .map(({ code }) => ({ value: code, label: names.animals.get(code) ?? code }))
      .toSorted((a, b) => byName.compare(a.label, b.label)),
    usualChance: sacComesOff.value,
    leftoversOutHours: snapshot.facts.policy.leftoversOutHours.value,
    sources: sacLines(open, snapshot),
    revision: snapshot.revision,
  };
  return page(c, SacsPage(props), statusOf(refused !== null));
}

const byName = new Intl.Collator('en', { numeric: true });

/** Who may have a sac: single animals that are grown or nearly so, and no males. */
const mothersIn = ({ animals, facts }: Snapshot): readonly Animal[] =>
  animals.filter((animal) => {
    const kind = facts.kinds.get(animal.kind);
    if (animal.sex === 'male' || animal.count > 1 || kind === undefined) return false;
    return ['subadult', 'adult'].includes(ruleOf(kind, animal).stage);
  });

const kindName = ({ snapshot }: Visit, { animalKind }: PlannedChange): string =>
  kindNameOf(snapshot.facts.kinds, animalKind);

function viewOf(here: Visit, change: PlannedChange): SacView {
  const kind = here.snapshot.facts.kinds.get(change.animalKind);
  const wave = kind === undefined ? null : hatchWave(here.snapshot, change);
  return {
    change,
    kind: kindName(here, change),
    wave,
    prey: wave === null ? null : youngPrey(here.snapshot, change, wave),
    regulated: kind?.cautions.includes('regulated') === true,
  };
}

function pastWords(here: Visit, change: PlannedChange): string {
  const who = sentenceCase(sacOf(change, { names: here.names, kind: kindName(here, change) }));
  const { ended = null, settled = null } = change.sac ?? {};
  if (ended !== null) return `${who}: ${ended.how === 'dud' ? 'a dud' : 'eaten'}, ${recordDay(ended.day)}`;
  return `${who}: first fed ${settled === null ? '' : recordDay(settled)}`;
}
