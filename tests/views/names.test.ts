/** Names within a sentence: sizes beside prey, kinds as many or as one. */
import { expect, test } from 'vitest';
import { headsOfSize, kindsNamed, sizedPrey } from '../../views/names.ts';

test('a size in figures stands in brackets after its prey, a size in a word before it', () => {
  expect(sizedPrey('1/4 in', 'house crickets')).toBe('house crickets (1/4 in)');
  expect(sizedPrey('small', 'house crickets')).toBe('small house crickets');
  expect(sizedPrey('', 'house crickets')).toBe('house crickets');
  expect(headsOfSize('40', '1/4 in')).toBe('40 of 1/4 in');
  expect(headsOfSize('40', 'small')).toBe('40 small');
});

test('kinds of animals are named as many or as one', () => {
  const kinds = new Map(
    ['leopard gecko', 'ghost mantis', 'pantropical huntsman'].map((commonName) => [
      commonName,
      { commonName },
    ]),
  );
  const many = (code: string, n = 40) => kindsNamed(kinds, code, n);
  expect(many('leopard gecko')).toBe('leopard geckos');
  expect(many('leopard gecko', 1)).toBe('leopard gecko');
  expect(many('ghost mantis')).toBe('ghost mantises');
  expect(many('pantropical huntsman')).toBe('pantropical huntsmen');
  expect(many('unicorn')).toBe('a kind no longer known');
});
