/** The command line sees the Book as the keeper changed it. */
import { expect, it } from 'vitest';
import { addKind, editRule, loadSnapshot, renameKind } from '../../src/actions/index.ts';
import { pencilRoom, type Terminal } from '../support/command.ts';
import { onDatabase } from '../support/on-database.ts';
import { facts } from '../support/room.ts';
import { good } from '../support/store-at.ts';

const KNEE = 'brachypelma-hamorii';

const wanted = async (at: Terminal): Promise<number> => {
  const { out } = await at.type('demand', '--json', '--weeks', '2');
  const { groups } = JSON.parse(out) as { groups: { cumulative: { mean: number }[] }[] };
  return groups.reduce((sum, { cumulative }) => sum + (cumulative.at(-1)?.mean ?? 0), 0);
};

it('counts the demand by the keeper’s own rules', async () => {
  const at = await pencilRoom();
  const before = await wanted(at);
  await onDatabase(at, async (context) => {
    for (const { stage } of facts.kinds.get(KNEE)!.stages)
      good(await editRule(context, { kind: KNEE, stage, itemsLeast: 20, itemsMost: 20 }));
  });
  expect(await wanted(at)).toBeGreaterThan(5 * before);
});

it('brings in lists that name kinds of the keeper’s own, and kinds by their old names', async () => {
  const at = await pencilRoom();
  await onDatabase(at, async (context) => {
    good(await addKind(context, { from: KNEE, name: 'Brachypelma nova', commonName: 'Golden gecko spider' }));
    good(await renameKind(context, { kind: KNEE, name: 'Hamorius hamorii', commonName: 'Mexican red-knee' }));
  });
  const list = at.file(
    'list.csv',
    [
      'who,kind,size',
      'One,Brachypelma nova,30 mm',
      'Two,B. nova,30 mm',
      'Three,Brachypelma hamorii,30 mm',
      'Four,Hamorius hamorii,30 mm',
      'Five,any gecko,30 mm',
      '',
    ].join('\n'),
  );
  expect((await at.type('import', list)).exit).toBe(0);
  await onDatabase(at, async (context) => {
    const { animals } = await loadSnapshot(context);
    const kindOf = new Map(animals.map(({ name, kind }) => [name, kind]));
    expect(kindOf.get('One')).toBe('K1');
    expect(kindOf.get('Two')).toBe('K1');
    expect(kindOf.get('Three')).toBe(KNEE);
    expect(kindOf.get('Four')).toBe(KNEE);
    expect(kindOf.get('Five')).toBe('lizard');
  });
});
