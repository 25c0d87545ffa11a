/** Marks of a round not sent yet survive a reload: kept on this device under the form and its day. */
import { forget, keep, readKept } from './kept.js';

/** Forms whose marks survive a reload. */
const KEPT_HERE = 'form[data-keep]:has(.shelf)';
const MARKED = 'input:not([type=hidden]), select, textarea';

const keyOf = (form) => `preylarder marks ${form.id} ${form.elements.namedItem('day').value}`;
const controlsOf = (place) => [...place.querySelectorAll(MARKED)].filter(({ name }) => name !== '');
const isTick = (control) => control.type === 'checkbox' || control.type === 'radio';
const nameOf = (control) => (isTick(control) ? `${control.name} ${control.value}` : control.name);
const markOf = (control) => (isTick(control) ? control.checked : control.value);

/** Whether nothing is said with it: no tick, or the choice that says "as shown". */
const isBlank = (control) => control.value === '' || (isTick(control) && !control.checked);

const marksIn = (place) =>
  Object.fromEntries(
    controlsOf(place)
      .filter((control) => !isBlank(control))
      .map((control) => [nameOf(control), markOf(control)]),
  );

/** As the page came with it. */
function isUntouched(control) {
  if (isTick(control)) return control.checked === control.defaultChecked;
  if (control.tagName !== 'SELECT') return control.value === control.defaultValue;
  const first = [...control.options].find((option) => option.defaultSelected) ?? control.options[0];
  return control.value === (first?.value ?? '');
}

/** Whether something stands in a form here that is kept nowhere else. */
export const isTouched = () =>
  [...document.forms]
    .filter((form) => !form.matches(KEPT_HERE))
    .some((form) => controlsOf(form).some((control) => !control.disabled && !isUntouched(control)));

/** Puts kept marks back; a disclosure that hides one is opened. */
export function restoreMarks() {
  for (const form of document.querySelectorAll(KEPT_HERE)) {
    const marks = readKept(keyOf(form)) ?? {};
    for (const control of controlsOf(form)) {
      if (!(nameOf(control) in marks)) continue;
      if (isTick(control)) control.checked = marks[nameOf(control)];
      else control.value = marks[nameOf(control)];
      const hidden = control.closest('details');
      if (hidden !== null) hidden.open = true;
    }
  }
}

/** Keeps the marks of the form a control stands in. */
export function keepMarks(control) {
  const form = control.form ?? control.closest?.('form');
  if (form?.matches(KEPT_HERE)) keep(keyOf(form), { ...readKept(keyOf(form)), ...withoutOld(form) });
}

/** Marks now in the form; those taken back are undefined and so not kept. */
const withoutOld = (form) => {
  const none = Object.fromEntries(controlsOf(form).map((control) => [nameOf(control), undefined]));
  return { ...none, ...marksIn(form) };
};

/** Forgets the marks of what was sent: one shelf, or all. */
export function forgetMarks(form, place) {
  if (!form.matches(KEPT_HERE)) return;
  const left = { ...readKept(keyOf(form)) };
  for (const control of controlsOf(place)) delete left[nameOf(control)];
  if (place === form || Object.keys(left).length === 0) forget(keyOf(form));
  else keep(keyOf(form), left);
}
