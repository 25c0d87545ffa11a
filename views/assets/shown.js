/** Another page shown in place of this one, from its markup: the address, the scripts and what is kept stay. */

/** Told on the document whenever the page's body was replaced, so that scripts can start anew on it. */
export const SHOWN = 'preylarder:shown';

/** Between the outbox above the page and the shelf the keeper goes on with. */
const GAP_PX = 8;

/** The first shelf of `names` that is on the page. */
const shelfOf = (names) => names.map(shelfNamed).find((shelf) => shelf !== null) ?? null;
const shelfNamed = (name) =>
  document.querySelector(`.shelf[data-shelf="${CSS.escape(name)}"]:not(.is-kept, .is-sending, .is-sent)`);
const topOf = (element) => element.getBoundingClientRect().top;

/** Does something to the page and leaves the keeper's eye at the first of the named shelves that is left. */
export function holdingPlace(names, change) {
  const before = shelfOf(names);
  const wasAt = before === null ? 0 : topOf(before);
  const name = before?.dataset.shelf;
  change();
  const after = name === undefined ? null : shelfNamed(name);
  const least = document.querySelector('.outbox.has-words')?.offsetHeight ?? -GAP_PX;
  if (after !== null)
    window.scrollBy(0, topOf(after) - Math.max(least + GAP_PX, Math.min(wasAt, innerHeight / 2)));
  return after;
}

/** The shelves where the keeper goes on: those that follow, then those before. */
export function shelvesAfter(place) {
  const shelves = [...document.querySelectorAll('.shelf[data-shelf]:not(.is-kept, .is-sent)')];
  const at = shelves.indexOf(place);
  return [...shelves.slice(at + 1), ...shelves.slice(0, Math.max(0, at))].map(({ dataset }) => dataset.shelf);
}

export function show(html) {
  const next = new DOMParser().parseFromString(html, 'text/html');
  document.title = next.title;
  document.documentElement.className = next.documentElement.className;
  document.body.replaceChildren(...next.body.childNodes);
  window.htmx?.process(document.body);
  document.dispatchEvent(new CustomEvent(SHOWN));
}

/** Where reading goes on: what is wrong, else the place named, else the top of the page. */
export function focusOn(place) {
  const wrong =
    document.querySelector('[aria-invalid="true"]') ?? document.querySelector('.problem[role="alert"]');
  const target = wrong ?? place ?? document.querySelector('#main');
  if (target === null) return;
  if (!target.matches('input, select, textarea, button, a, [tabindex]')) target.tabIndex = -1;
  target.focus({ preventScroll: true });
  if (wrong !== null) wrong.scrollIntoView({ block: 'center' });
  else if (place === null) window.scrollTo(0, 0);
}
