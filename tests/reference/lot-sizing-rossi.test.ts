/**
 * Four periods of Rossi 2021, Inventory Analytics (with the tests of its program): plain lot sizing 110, at most 30 an
 * order 280, and orders that may be filled late, each unit at 2 a period and none at the end, 230.
 */
import { expect, it } from 'vitest';
import { leastCost } from '../support/plan/optimum.ts';
import { type Textbook, textbookProblem } from '../support/plan/textbook.ts';

const FOUR = { demand: [[10, 20, 30, 40]], holding: [1] };

const CASES: readonly { name: string; book: Textbook; cost: number }[] = [
  { name: 'with no bound', book: { ...FOUR, jointSetup: 30 }, cost: 110 },
  {
    name: 'with at most 30 an order',
    book: { ...FOUR, jointSetup: 40, unitCost: 1, capacity: 30 },
    cost: 280,
  },
  {
    name: 'with orders filled late',
    book: { ...FOUR, jointSetup: 40, unitCost: 1, backorder: 2 },
    cost: 230,
  },
];

it.each(CASES)('$name costs $cost', ({ book, cost }) => {
  expect(leastCost(textbookProblem(book))).toBeCloseTo(cost, 6);
});
