/** The example files we give away are read without trouble, with the facts the program ships. */
import { describe, expect, it } from 'vitest';
import { kinds } from '../../src/facts/kinds/index.ts';
import { preySpecies } from '../../src/facts/prey/index.ts';
import { ANIMALS_TEMPLATE, readAnimals, readStock, STOCK_TEMPLATE } from '../../src/intake/index.ts';
import { TODAY } from '../support/room.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

describe('our own example files', () => {
  it('are ready to be written, the animals', () => {
    const reading = readAnimals(bytes(ANIMALS_TEMPLATE), { today: TODAY, kinds });
    expect(reading).toMatchObject({ ready: true, problems: [], asks: [] });
    expect(reading.rows.flatMap(({ notes }) => notes.filter((note) => note.weight === 'trouble'))).toEqual(
      [],
    );
  });

  it('are ready to be written, the stock', () => {
    const reading = readStock(bytes(STOCK_TEMPLATE), { today: TODAY, species: preySpecies });
    expect(reading).toMatchObject({ ready: true, problems: [], asks: [] });
    expect(reading.rows.flatMap(({ notes }) => notes.filter((note) => note.weight === 'trouble'))).toEqual(
      [],
    );
  });
});
