/** Marks of a round not sent yet survive a reload: kept on this device under the form and its day. */
import { forget, keep, readKept } from './kept.js';

const MARKED = 'input:not([type=hidden]), select, textarea';

const keyOf = (form) => `preylarder marks ${form.id} ${form.elements.namedItem('day').value}`;
const controlsOf = (place) => [...place.querySelectorAll(MARKED)].filter(({ name }) => name !== '');
const isTick = (control) => control.type === 'checkbox' || control.type === 'radio';
const nameOf = (control) => (isTick(control) ? `${control.name} ${control.value}` : control.name);
const markOf = (control) => (isTick(control) ? control.checked : control.value);

/** What the page says where nobody has marked anything. */
function unmarked(control) {
  if (isTick(control)) return control.defaultChecked;
  if (control.tagName !== 'SELECT') return control.defaultValue;
  return ([...control.options].find((option) => option.defaultSelected) ?? control.options[0])?.value ?? '';
}

/** What differs from the page as it came. */
const marksIn = (place) =>
  Object.fromEntries(
    controlsOf(place)
      .filter((control) => markOf(control) !== unmarked(control))
      .map((control) => [nameOf(control), markOf(control)]),
  );

const formsWithMarks = () => document.querySelectorAll('form[data-keep]:has(.shelf)');

/** Puts kept marks back; a disclosure that hides one is opened. */
export function restoreMarks() {
  for (const form of formsWithMarks()) {
    const marks = readKept(keyOf(form)) ?? {};
    for (const control of controlsOf(form)) {
      if (!(nameOf(control) in marks)) continue;
      if (isTick(control)) control.checked = marks[nameOf(control)];
      else control.value = marks[nameOf(control)];
      const hidden = control.closest('details');
      if (hidden !== null) hidden.open = true;
      control.dispatchEvent(new CustomEvent('preylarder:restored', { bubbles: true }));
    }
  }
}

/** Keeps the marks of the form a control stands in. */
export function keepMarks(control) {
  const form = control.form ?? control.closest?.('form');
  if (form?.matches('[data-keep]:has(.shelf)'))
    keep(keyOf(form), { ...readKept(keyOf(form)), ...withoutOld(form) });
}

/** Marks now in the form; those taken back are undefined and so not kept. */
const withoutOld = (form) => {
  const none = Object.fromEntries(controlsOf(form).map((control) => [nameOf(control), undefined]));
  return { ...none, ...marksIn(form) };
};

/** Forgets the marks of what was sent: one shelf, or all. */
export function forgetMarks(form, place) {
  if (!form.matches(':has(.shelf)')) return;
  const left = { ...readKept(keyOf(form)) };
  for (const control of controlsOf(place)) delete left[nameOf(control)];
  if (place === form || Object.keys(left).length === 0) forget(keyOf(form));
  else keep(keyOf(form), left);
}
