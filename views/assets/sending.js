/** One sending: the fields of a form as they stand when it is tapped, and what the server answered. */
import { kindOf } from './queue.js';

/** A server that says nothing for so long is away. */
const PATIENCE_MS = 8000;

const FORM_TYPE = 'application/x-www-form-urlencoded';

/** What a form would send with this button, in words for the keeper too. */
export function sendingOf(form, button) {
  const fields = new FormData(form);
  if (button?.name) fields.append(button.name, button.value);
  const part = button?.closest('[data-shelf]')?.dataset.shelf ?? '';
  const of = part || (button?.name ? button.textContent.trim() : '');
  return {
    address: new URL(form.action).pathname,
    body: new URLSearchParams(fields).toString(),
    form: form.id,
    words: of === '' ? form.dataset.keep : `${form.dataset.keep}, ${of}`,
    part,
    answers: form.dataset.answers ?? '',
  };
}

/** Sends it and follows where that leads; never throws. */
export async function send({ address, body }) {
  const signal = AbortSignal.timeout(PATIENCE_MS);
  const headers = { 'Content-Type': FORM_TYPE, Accept: 'text/html' };
  try {
    const answer = await fetch(address, { method: 'POST', body, headers, signal });
    const html = await answer.text();
    const { status, redirected, url } = answer;
    const path = new URL(url).pathname;
    return { kind: kindOf({ status, redirected, path }), status, url, html };
  } catch {
    return { kind: 'away', status: 0, url: '', html: '' };
  }
}

/** The page as the server has it now; null when it cannot be had. */
export async function freshPage() {
  try {
    const answer = await fetch(location.href, { headers: { Accept: 'text/html' } });
    return answer.ok && new URL(answer.url).pathname === location.pathname ? await answer.text() : null;
  } catch {
    return null;
  }
}

/** Sends it as a form of the page, so that the keeper sees what the server makes of it. */
export function sendAsPage({ address, body }) {
  const form = document.createElement('form');
  form.method = 'post';
  form.action = address;
  for (const [name, value] of new URLSearchParams(body)) {
    const field = document.createElement('input');
    field.type = 'hidden';
    field.name = name;
    field.value = value;
    form.append(field);
  }
  document.body.append(form);
  form.submit();
}
