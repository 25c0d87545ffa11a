/** A few prey species with invented numbers, for tests that need names and size classes. */

import type { PreySpecies, SizeClass } from '../../src/husbandry/prey/species.ts';
import type { PreyForm } from '../../src/husbandry/prey-form.ts';
import type { Sourced } from '../../src/husbandry/sourced.ts';

const invented = <T>(value: T): Sourced<T> => ({
  value,
  unit: '1',
  source: 'invented',
  status: 'from memory',
});

interface PreyWish {
  readonly code: string;
  readonly name: string;
  readonly commonName: string;
  readonly aliases?: readonly string[];
  readonly form: PreyForm;
  readonly adultMm: number;
  readonly classes: readonly SizeClass[];
}

const prey = (wish: PreyWish): PreySpecies => ({
  code: wish.code,
  name: wish.name,
  commonName: wish.commonName,
  aliases: wish.aliases ?? [],
  form: wish.form,
  massPerCubicMm: invented(0.03),
  widthPerLength: invented(0.25),
  spans: [],
  stages: [],
  immatureCv: invented(0.15),
  lengthByDevelopment: invented([]),
  adultLengthMm: invented(wish.adultMm),
  adult: { longevity: invented([]), cv: invented(0.3), fed: true },
  laying: null,
  cup: null,
  sizeClasses: invented(wish.classes),
  holdingLossPerDay: invented(0.02),
  traits: { hard: false, bites: true },
  notes: [],
});

const CRICKET_CLASSES: readonly SizeClass[] = [
  { name: 'pinhead', fromMm: 1.5, toMm: 3 },
  { name: 'small', fromMm: 4, toMm: 7 },
  { name: 'medium', fromMm: 9, toMm: 14 },
  { name: 'large', fromMm: 16, toMm: 20 },
  { name: 'adult', fromMm: 20, toMm: 25 },
];

export const INVENTED_PREY: readonly PreySpecies[] = [
  prey({
    code: 'banded-cricket',
    name: 'Gryllodes sigillatus',
    commonName: 'Banded cricket',
    form: 'cricket',
    adultMm: 20,
    classes: CRICKET_CLASSES,
  }),
  prey({
    code: 'house-cricket',
    name: 'Acheta domesticus',
    commonName: 'House cricket',
    aliases: ['heimchen'],
    form: 'cricket',
    adultMm: 25,
    classes: CRICKET_CLASSES,
  }),
  prey({
    code: 'dubia',
    name: 'Blaptica dubia',
    commonName: 'Dubia roach',
    aliases: ['dubia'],
    form: 'roach',
    adultMm: 40,
    classes: [
      { name: 'small', fromMm: 6, toMm: 12 },
      { name: 'medium', fromMm: 15, toMm: 25 },
      { name: 'large', fromMm: 30, toMm: 45 },
    ],
  }),
  prey({
    code: 'red-runner',
    name: 'Shelfordella lateralis',
    commonName: 'Red runner',
    form: 'roach',
    adultMm: 28,
    classes: [
      { name: 'small', fromMm: 4, toMm: 10 },
      { name: 'large', fromMm: 20, toMm: 28 },
    ],
  }),
];
