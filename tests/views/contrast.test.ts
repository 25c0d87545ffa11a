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

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const full = hex.length === 4 ? [...hex.slice(1)].map((digit) => digit + digit).join('') : hex.slice(1);
  const [red, green, blue] = [0, 2, 4].map((at) => {
    const share = Number.parseInt(full.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
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

it('the dark of the system is the dark that can be chosen', () => {
  expect(tokens(blockOf('.theme-system'))).toEqual(tokens(blockOf('.theme-dark')));
});
