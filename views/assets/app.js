/** What script adds: no double sending, the outbox, marks that survive a reload, keys. All works without it. */
import { startKeys } from './keys.js';
import { keepMarks } from './marks.js';
import { keepAndSend, startOutbox } from './outbox.js';

const AGAIN_AFTER_MS = 8000;

/** A button with an address of its own goes there as ever. */
const isKept = (form, button) => form.dataset.keep !== undefined && !button?.hasAttribute('formaction');

document.addEventListener('submit', (event) => {
  const form = event.target;
  if (isKept(form, event.submitter)) {
    event.preventDefault();
    keepAndSend(form, event.submitter);
  } else if (form.dataset.sent === 'yes') event.preventDefault();
  else sentOnce(form);
});

/** A form is sent once; after eight seconds without an answer it may be sent again. */
function sentOnce(form) {
  form.dataset.sent = 'yes';
  for (const button of form.querySelectorAll('button')) button.setAttribute('aria-disabled', 'true');
  setTimeout(() => release(form), AGAIN_AFTER_MS);
}

function release(form) {
  delete form.dataset.sent;
  for (const button of form.querySelectorAll('button')) button.removeAttribute('aria-disabled');
}

// A page brought back by the back button may be sent again.
window.addEventListener('pageshow', (event) => {
  if (event.persisted) document.querySelectorAll('form').forEach(release);
});

document.addEventListener('change', ({ target }) => keepMarks(target));
document.addEventListener('input', ({ target }) => keepMarks(target));
startOutbox();
startKeys();
