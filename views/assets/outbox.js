/** The outbox: forms marked `data-keep` are kept on this device, sent in the background, and leave when done. */
import { keepingForms, placeOf, showHeld, showSent } from './held.js';
import { alone, box, outboxItemOf } from './kept.js';
import { forgetMarks, isTouched, restoreMarks } from './marks.js';
import { drawBanner, say, settle } from './outbox-banner.js';
import { sentWords, thrownWords, unkeptWords, writtenWords } from './outbox-words.js';
import { drain, pauseMs, toldOf } from './queue.js';
import { freshPage, send, sendAsPage, sendingOf } from './sending.js';
import { focusOn, holdingPlace, SHOWN, shelvesAfter, show } from './shown.js';

const OPENED = 'preylarder opened';
/** Another tab is sending: look again soon. */
const ELSEWHERE_MS = 1500;
const LOGGED_OUT_MS = 60_000;

/** Items sent for the first time from this very page, with the shelves to go on with: their answer is shown. */
const fresh = new Map();
let sending = false;
let again = false;
let timer;

/** Takes the sending of a form over. */
export function keepAndSend(form, button) {
  const place = button?.closest('[data-shelf]') ?? form;
  const sent = sendingOf(form, button);
  const item = box.add(sent, Date.now());
  if (item === null) return sendUnkept(sent);
  fresh.set(item.id, shelvesAfter(place));
  forgetMarks(form, place);
  redraw();
  return pump();
}

/** A device that keeps nothing: the form stays as it is until the server has it. */
async function sendUnkept(sent) {
  const answer = await send(sent);
  if (answer.kind === 'done' || answer.status === 422) showAnswer(sent, answer, []);
  else say(unkeptWords(sent, answer.kind));
}

/** Sends what waits; however often it is called, one thing at a time. */
async function pump() {
  again = true;
  if (sending) return;
  sending = true;
  clearTimeout(timer);
  let why = 'empty';
  try {
    while (again) {
      again = false;
      why = await alone((isMine) => drain({ box, send, isMine, answered }));
    }
  } finally {
    sending = false;
  }
  goOn();
  if (why !== 'empty') timer = setTimeout(pump, restMs(why));
}

function restMs(why) {
  if (why === 'elsewhere') return ELSEWHERE_MS;
  if (why === 'logged-out') return LOGGED_OUT_MS;
  return pauseMs(Math.max(1, ...box.items().map(({ tries }) => tries)));
}

function answered(item, answer) {
  const next = fresh.get(item.id);
  const isDone = answer.kind === 'done';
  if (isDone) box.remove(item.answers);
  if (isDone && next === undefined) arrivedLater(item);
  if (next === undefined || !(isDone || answer.status === 422)) return;
  fresh.delete(item.id);
  box.remove(item.id);
  showAnswer(item, answer, next);
}

/** What got no answer folds, and the keeper goes on with the next shelf. */
function goOn() {
  const next = [...fresh.values()].at(-1);
  fresh.clear();
  if (next === undefined) redraw();
  else focusOn(holdingPlace(next, redraw) ?? document.querySelector('#outbox'));
}

/** The page the answer is: in place where it is this very page or its next shelf, else the browser goes there. */
function showAnswer(item, { kind, url, html }, next) {
  const isHere = new URL(url || location.href).pathname === location.pathname || item.part !== '';
  if (kind === 'done' && !isHere) return location.assign(url);
  if (kind === 'done') history.replaceState(null, '', url);
  const place = holdingPlace(next, () => show(html));
  if (kind === 'done') say(writtenWords(item));
  else tie(item);
  focusOn(kind === 'done' ? place : null);
}

/** The form that puts right an item set aside takes it along when it is done. */
function tie({ form, answers }) {
  const again = document.getElementById(form);
  if (again === null || answers === '') return;
  again.dataset.answers = answers;
  redraw();
}

/** Something kept before has arrived. */
function arrivedLater(item) {
  const place = placeOf(item);
  if (place !== null) showSent(place);
  if (box.items().some(({ state }) => state !== 'refused')) return;
  say(sentWords(item), 'seen');
  const isShown = document.querySelector('.is-sent') !== null || item.address.startsWith(location.pathname);
  if (isShown) refresh(() => say(sentWords(item), 'seen'));
}

/** Shows the page as the server has it now, unless something typed would be lost. */
async function refresh(then) {
  const html = await freshPage();
  if (html === null || isTouched()) return;
  const shelves = [...document.querySelectorAll('.shelf[data-shelf]')].map(({ dataset }) => dataset.shelf);
  holdingPlace(shelves, () => show(html));
  then();
}

function redraw() {
  const open = keepingForms().map(({ dataset }) => dataset.answers);
  const items = toldOf(box.items(), open);
  showHeld(items);
  drawBanner(items, acts);
}

/** What the keeper may do about what waits. */
const acts = {
  sendNow: pump,
  /** It stays kept until the corrected form is done. */
  open: (item) => {
    sessionStorage.setItem(OPENED, item.id);
    sendAsPage(item);
  },
  throwAway: (item) => {
    box.remove(item.id);
    redraw();
    say(thrownWords(item), 'seen');
  },
};

/** After "Open it": the form stands here again, or the server took it after all. */
function comeBack() {
  const id = sessionStorage.getItem(OPENED);
  sessionStorage.removeItem(OPENED);
  const item = box.items().find((each) => each.id === id);
  if (item === undefined) return;
  const form = keepingForms().find(
    (each) => each.id === item.form && each.querySelector('.problem') !== null,
  );
  if (form === undefined) return box.change({ ...item, state: 'waiting' });
  form.dataset.answers = item.id;
  focusOn(null);
}

function begin() {
  settle();
  restoreMarks();
  redraw();
}

/** Another tab sent or threw away what is held on this page. */
function elsewhere({ key, oldValue, newValue }) {
  const item = newValue === null ? outboxItemOf(key, oldValue) : null;
  const place = item === null ? null : placeOf(item);
  if (place !== null) {
    fresh.delete(item.id);
    showSent(place);
    refresh(redraw);
  }
  redraw();
}

/** Starts the outbox on this page. */
export function startOutbox() {
  comeBack();
  begin();
  document.addEventListener(SHOWN, begin);
  window.addEventListener('online', pump);
  window.addEventListener('storage', elsewhere);
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && pump());
  pump();
}
