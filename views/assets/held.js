/** Shelves and forms whose sending is kept are folded and cannot be sent a second time. */
import { noteWords } from './outbox-words.js';

const CONTROLS = 'input, select, textarea, button';

/** The forms on this page that keep what they send. */
export const keepingForms = () => [...document.querySelectorAll('form[data-keep]')];

const valueIn = (form, name) => form.elements.namedItem(name)?.value;

/** Whether an item was sent by this very form, or by the same round of the same evening before a reload. */
function isOf(item, form) {
  if (item.form !== form.id || item.address !== new URL(form.action).pathname) return false;
  if (form.dataset.answers === item.id) return false;
  const fields = new URLSearchParams(item.body);
  if (fields.get('formId') === valueIn(form, 'formId')) return true;
  return form.querySelector('.shelf') !== null && fields.get('day') === valueIn(form, 'day');
}

/** What an item holds on this page: a shelf, or a whole form; null when neither is here. */
export function placeOf(item) {
  const form = keepingForms().find((each) => isOf(item, each));
  if (form === undefined) return null;
  return item.part === '' ? form : form.querySelector(`[data-shelf="${CSS.escape(item.part)}"]`);
}

/** Holds what is kept, and lets go of all else that was held. */
export function showHeld(items) {
  for (const note of document.querySelectorAll('.kept-note')) note.remove();
  for (const place of document.querySelectorAll('.is-kept, .is-sending'))
    place.classList.remove('is-kept', 'is-sending');
  for (const control of document.querySelectorAll('[data-held]')) {
    control.disabled = false;
    delete control.dataset.held;
  }
  for (const item of items) {
    const place = placeOf(item);
    if (place !== null) hold(place, item.tries === 0 ? 'is-sending' : 'is-kept', noteWords(item));
  }
}

function hold(place, look, words) {
  place.classList.add(look);
  for (const control of place.querySelectorAll(CONTROLS)) {
    if (control.disabled) continue;
    control.disabled = true;
    control.dataset.held = '';
  }
  const note = document.createElement('p');
  note.className = 'kept-note';
  note.textContent = words;
  const head = place.querySelector(':scope > h2');
  if (head === null) place.prepend(note);
  else head.after(note);
}

/** What has arrived stays folded until the page is fetched anew. */
export function showSent(place) {
  for (const control of place.querySelectorAll(CONTROLS)) {
    control.disabled = true;
    delete control.dataset.held;
  }
  place.classList.add('is-sent');
}
