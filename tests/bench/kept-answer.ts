/** The Sunday question put twice to a stored room of 2,000: read and computed, then taken from the kept answer. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { kindsByCode } from '../../src/facts/kinds/index.ts';
import { civilDate } from '../../src/husbandry/calendar.ts';
import type { Result } from '../../src/husbandry/result.ts';
import { facts, mixedAnimals, TODAY } from '../support/room.ts';
import { leastOf, spentOn } from './clock.ts';
import { compiledActions, compiledStore } from './compiled.ts';
import type { Row } from './table.ts';

const ANIMALS = 2000;
const RUNS = 20;
const MOMENT = `${civilDate(TODAY)}T18:00:00.000Z`;

export async function keptRow(): Promise<Row> {
  const { openStore } = await compiledStore();
  const actions = await compiledActions();
  const folder = mkdtempSync(join(tmpdir(), 'preylarder-bench-'));
  const url = pathToFileURL(join(folder, 'larder.db')).href;
  const store = good(await openStore({ place: { url }, moment: MOMENT }));
  const context = { store, facts, clock: () => ({ today: TODAY, moment: MOMENT }) };
  good(await actions.firstRoom(context));
  good(await actions.importAnimals(context, { bytes: animalList() }));
  good(await actions.importStock(context, { bytes: STOCK }));
  const ask = async () => good(await actions.askSunday(context, { options: { replicates: 60 } }));
  const first = await spentOn(ask);
  const again = await leastOf(RUNS, ask);
  // With a Book of its own each time, it is not the room read last.
  const reading = await leastOf(RUNS, () => actions.loadSnapshot({ ...context, facts: { ...facts } }));
  const { animals } = await actions.loadSnapshot(context);
  await store.close();
  rmSync(folder, { recursive: true });
  return {
    name: `Sunday question unchanged: ${animals.length} animals in the store`,
    value: `${again.wallMs.toFixed(1)} ms (processor ${again.processorMs.toFixed(1)})`,
    beside: `reading the room ${reading.wallMs.toFixed(1)} ms; first answer, 60 replicates: ${first.wallMs.toFixed(0)} ms`,
  };
}

function good<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
}

function animalList(): Uint8Array {
  const rows = mixedAnimals(ANIMALS).map(({ code, kind, gaugeMm, lastTaken }) =>
    [code, kindsByCode.get(kind)?.name, `${gaugeMm.toFixed(1)} mm`, civilDate(lastTaken ?? TODAY)].join(','),
  );
  return new TextEncoder().encode(`${['who,kind,size,fed', ...rows].join('\n')}\n`);
}

const STOCK = new TextEncoder().encode(
  [
    'bin,prey,size,count,came',
    `Small box,house cricket,small,9000,${civilDate(TODAY - 2)}`,
    `Middle box,house cricket,medium,9000,${civilDate(TODAY - 2)}`,
    `Tub,dubia roach,small,4000,${civilDate(TODAY - 2)}`,
    '',
  ].join('\n'),
);
