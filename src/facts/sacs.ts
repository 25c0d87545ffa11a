/** From a sac, an ootheca or a birth to the first feed of the young, by group of animals: wide ranges, few of them sourced. */
import type { KindGroup } from '../husbandry/animals/index.ts';
import type { Sourced } from '../husbandry/sourced.ts';
import { memory } from './sourced.ts';

type Days = Sourced<readonly [number, number]>;
type ByGroup = Readonly<Record<KindGroup, Days>>;

const days = (least: number, most: number, note: string): Days => memory([least, most], 'days', note);

/** Days from laying to the first feed of the young. */
export const layingToFirstFeed: ByGroup = {
  tarantula: days(
    60,
    90,
    'our own starting value: care pages say 45-75 days in the sac, then a moult or two',
  ),
  'true spider': days(
    20,
    50,
    'our own starting value: 14-40 days in the sac on general pages, and about a week',
  ),
  'jumping spider': days(20, 40, 'our own starting value: 14-28 days on general pages, and about ten days'),
  scorpion: days(
    10,
    25,
    'our own starting value, counted from birth: until the young leave the back of the mother',
  ),
  mantid: days(28, 70, 'our own starting value: 21-70 days by species and warmth; the nymphs feed at once'),
  centipede: days(60, 100, 'our own starting value: eggs about a month, guarded for about another'),
  'whip spider': days(95, 140, 'our own starting value: 90-120 days carried, and some days on the back'),
  frog: days(60, 100, 'our own starting value: egg to froglet out of the water'),
  lizard: days(30, 100, 'our own starting value: 30-100 days in the incubator by species and warmth'),
};

/** Days from hatching to the first feed of the young. */
export const hatchToFirstFeed: ByGroup = {
  tarantula: days(
    5,
    30,
    'our own starting value: the second moult comes days after hatching in one kind measured',
  ),
  'true spider': days(2, 14, 'our own starting value'),
  'jumping spider': days(2, 14, 'our own starting value'),
  scorpion: days(10, 25, 'our own starting value'),
  mantid: days(0, 3, 'our own starting value'),
  centipede: days(20, 45, 'our own starting value'),
  'whip spider': days(4, 14, 'our own starting value'),
  frog: days(2, 7, 'our own starting value'),
  lizard: days(1, 7, 'our own starting value'),
};

/** Chance that a sac comes to anything, before anybody knows. */
export const sacComesOff: Sourced = memory(0.7, '1', 'our own starting value; first sacs fail more often');
