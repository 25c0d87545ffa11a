/** Things to press that are smaller than they should be, as a finger finds them. */
import type { Page } from 'playwright-core';

const PRESSED = 'a[href], button, summary, select, textarea, input:not([type=hidden]), [role=switch]';

/**
 * Each visible control below the size, as 'width x height: its words'. A link within a sentence is as high as its
 * line (WCAG 2.5.8, inline exception); a label belongs to what it presses; what only the keyboard finds is no target.
 */
export const smallTargets = (page: Page, leastPx: number, within = 'body'): Promise<readonly string[]> =>
  page.evaluate(
    ({ leastPx, within, PRESSED }) => {
      const inSentence = (element: Element) =>
        element.tagName === 'A' &&
        getComputedStyle(element).display === 'inline' &&
        [...(element.parentElement?.childNodes ?? [])].some(
          (node) => node !== element && (node.textContent ?? '').trim() !== '',
        );
      const isHiddenFromSight = (element: Element) => {
        const { clipPath, opacity } = getComputedStyle(element);
        return clipPath !== 'none' || (opacity === '0' && element.closest('label, .tap') === null);
      };
      const boxOf = (element: Element) => {
        const own = element.getBoundingClientRect();
        const label = (element as HTMLInputElement).labels?.[0]?.getBoundingClientRect();
        const isTick = /^(checkbox|radio)$/.test((element as HTMLInputElement).type ?? '');
        if (!isTick || label === undefined) return own;
        return new DOMRect(0, 0, Math.max(own.width, label.width), Math.max(own.height, label.height));
      };
      const isOffScreen = (element: Element) => element.getBoundingClientRect().bottom <= 0;
      return [...document.querySelectorAll(`${within} :is(${PRESSED})`)]
        .filter((element) => element.checkVisibility() && !isOffScreen(element))
        .filter((element) => !inSentence(element) && !isHiddenFromSight(element))
        .map((element) => ({ element, box: boxOf(element) }))
        .filter(({ box }) => Math.min(box.width, box.height) < leastPx - 0.01)
        .map(
          ({ element, box }) =>
            `${Math.round(box.width)} x ${Math.round(box.height)}: ${element.tagName} ${(element.textContent || element.id).trim()}`,
        );
    },
    { leastPx, within, PRESSED },
  );
