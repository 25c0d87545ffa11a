/** The three themes can be read: 4.5 to 1 for words, 3 to 1 for what is drawn. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { FORMS } from '../../src/actions/rule-fields.ts';

const css = readFileSync(new URL('../../views/assets/paper.css', import.meta.url), 'utf8');

function tokens(block: string): Map<string, string> {
  return new Map(
    [...block.matchAll(/--([a-z-]+): (#[0-9a-f]{3,6});/g)].map((match) => [match[1]!, match[2]!]),
  );
}

const blockOf = (selector: string): string => css.slice(css.indexOf(`${selector} {`)).split('}')[0] ?? '';

/** Red, green and blue as light. */
function linear(hex: string): readonly number[] {
  const full = hex.length === 4 ? [...hex.slice(1)].map((digit) => digit + digit).join('') : hex.slice(1);
  return [0, 2, 4].map((at) => {
    const share = Number.parseInt(full.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
}

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [red, green, blue] = linear(hex);
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}
function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].toSorted((x, y) => x - y);
  return (light! + 0.05) / (dark! + 0.05);
}

const PREY = FORMS.map((form) => form.replace(' ', '-'));
const WORDS = ['ink', 'ink-soft', 'link', 'trouble'];
const DRAWN = ['edge', 'missing', 'demand-edge', 'accent-edge', ...PREY];

describe.each([':root', '.theme-dark', '.theme-red'])('the theme of %s', (selector) => {
  const colours = tokens(blockOf(selector));
  const colour = (name: string) => colours.get(name) ?? '#000';

  it('has every colour it needs', () => {
    expect([...tokens(blockOf(':root')).keys()].filter((name) => !colours.has(name))).toEqual([]);
  });
  it.each(WORDS)('shows %s at 4.5 to 1 on paper and panel', (name) => {
    expect(contrast(colour(name), colour('paper'))).toBeGreaterThanOrEqual(4.5);
    expect(contrast(colour(name), colour('panel'))).toBeGreaterThanOrEqual(4.5);
  });
  it.each(PREY.map((form) => `${form}-ink`))('names prey in %s at 4.5 to 1', (name) => {
    expect(contrast(colour(name), colour('paper'))).toBeGreaterThanOrEqual(4.5);
  });
  it('shows the words of the act at 4.5 to 1', () => {
    expect(contrast(colour('on-accent'), colour('accent'))).toBeGreaterThanOrEqual(4.5);
  });
  it.each(DRAWN)('draws %s at 3 to 1', (name) => {
    expect(contrast(colour(name), colour('paper'))).toBeGreaterThanOrEqual(3);
  });
});

/** Light as eyes with all, without red and without green cones see it (Machado, Oliveira & Fernandes 2009). */
const CONES = {
  all: [1, 0, 0, 0, 1, 0, 0, 0, 1],
  'no red': [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
  'no green': [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.01182, 0.04294, 0.968881],
} as const;

/** CIE Lab (D65) of a colour to such eyes. */
function labOf(hex: string, cones: readonly number[]): readonly number[] {
  const light = linear(hex);
  const seen = [0, 3, 6].map((at) =>
    Math.min(
      1,
      Math.max(
        0,
        light.reduce((sum, part, i) => sum + part * cones[at + i]!, 0),
      ),
    ),
  );
  const mixed = (a: number, b: number, c: number, white: number) => {
    const t = (a * seen[0]! + b * seen[1]! + c * seen[2]!) / white;
    return t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16 / 116;
  };
  const [x, y, z] = [
    mixed(0.4124, 0.3576, 0.1805, 0.95047),
    mixed(0.2126, 0.7152, 0.0722, 1),
    mixed(0.0193, 0.1192, 0.9505, 1.08883),
  ];
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

describe.each([':root', '.theme-dark'])('the hues of prey in %s', (selector) => {
  const colours = tokens(blockOf(selector));

  it.each(Object.keys(CONES) as (keyof typeof CONES)[])(
    'are at least 9 apart for eyes with cones: %s',
    (eyes) => {
      const labs = PREY.map((form) => labOf(colours.get(form)!, CONES[eyes]));
      const close = PREY.flatMap((form, i) =>
        PREY.slice(i + 1).flatMap((other, j) =>
          Math.hypot(...labs[i]!.map((part, k) => part - labs[i + 1 + j]![k]!)) < 9
            ? [`${form}, ${other}`]
            : [],
        ),
      );
      /** These two lean on their hatches alone. */
      expect(close.filter((pair) => pair !== 'cricket, waxworm')).toEqual([]);
    },
  );
});

it('the dark of the system is the dark that can be chosen', () => {
  expect(tokens(blockOf('.theme-system'))).toEqual(tokens(blockOf('.theme-dark')));
});
