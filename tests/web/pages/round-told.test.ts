/** Rows of a round that stood written already: a few are told one by one, thousands by their number. */
import { expect, test } from 'vitest';
import { roundAgain } from '../../../src/web/pages/round-told.ts';
import { filledHome } from '../../support/house.ts';
import { words } from '../../support/markup-words.ts';
import { sheetIn } from '../../support/round-sheet.ts';
import { TODAY } from '../../support/store-at.ts';

const LONGEST_ADDRESS = 2000;

test('the address of a room of thousands stays short, and nobody is left out of the count', () => {
  const already = Array.from({ length: 3000 }, (_, at) => `A${at}`);
  const against = ['A9001', 'A9002'].map((animal) => ({ animal, said: 'died' as const }));
  const reply = { evening: '2024-10-04', recorded: 0, already, against };
  const address = roundAgain(reply, { today: TODAY, sent: {} });
  expect(address.length).toBeLessThan(LONGEST_ADDRESS);
  const query = new URL(address, 'http://localhost').searchParams;
  expect(query.get('against')?.split('.')).toHaveLength(2);
  const told = query.get('already')?.split('.') ?? [];
  expect(told.length + 2 + Number(query.get('untold'))).toBe(3002);
});

test('those not named are told by their number', async () => {
  const home = await filledHome();
  await home.send('/tonight', sheetIn(await home.see('/tonight')));
  const page = words(await home.see('/tonight?already=A1&untold=1200'));
  expect(page).toContain('1200 more stand written down already.');
  expect(words(await home.see('/tonight?already=A1&untold=none'))).not.toContain('written down already.');
});
