/** Single keys: find, help, undo, rows and outcomes. Never while typing, never in a dialog, and not when turned off. */
import { forget, keep, readKept } from './kept.js';
import { SHOWN } from './shown.js';

const OFF = 'preylarder keys off';
const ROWS = '[data-row], .serving';
const TYPED_IN = 'input:not([type=checkbox], [type=radio]), select, textarea, [contenteditable]';

const rows = () => [...document.querySelectorAll(ROWS)].filter((row) => row.checkVisibility());
const rowOf = (element) => element?.closest?.(ROWS) ?? null;

/** Undo is only focused: Enter presses it, once its words have been heard. */
const goTo = (css) => {
  const target = document.querySelector(css);
  target?.focus();
  return target !== null;
};

function find() {
  if (!goTo('#q')) location.assign('/animals#q');
  return true;
}

function help() {
  const dialog = document.querySelector('#keys-help');
  if (dialog === null) return false;
  dialog.showModal();
  return true;
}

/** To the row below (1) or above (-1); from outside the rows to the first. */
function move(step) {
  const all = rows();
  if (all.length === 0) return false;
  const at = all.indexOf(rowOf(document.activeElement));
  const row = all[at === -1 ? 0 : Math.max(0, Math.min(all.length - 1, at + step))];
  row.tabIndex = -1;
  row.focus();
  row.scrollIntoView({ block: 'nearest' });
  return true;
}

/** Presses the control that names the key; else as offered, not fed, otherwise; else the row's ticks in order. */
function outcome(key) {
  const row = rowOf(document.activeElement);
  if (row === null) return false;
  const named = row.querySelector(`[data-key="${key}"]`);
  const otherwise = row.querySelector('.otherwise');
  const ticks = row.querySelectorAll('input[type=checkbox]');
  if (named !== null) named.click();
  else if (otherwise === null) ticks[Number(key) - 1]?.click();
  else if (key === '1') asOffered(row);
  else if (key === '2') row.querySelector('[name=notFed][type=checkbox]')?.click();
  else openUp(otherwise);
  return true;
}

/** Takes every mark of the row back. */
function asOffered(row) {
  for (const tick of row.querySelectorAll('input:checked:not([value=""])')) {
    if (tick.type === 'checkbox') tick.click();
    else row.querySelector(`input[name="${CSS.escape(tick.name)}"][value=""]`)?.click();
  }
}

function openUp(details) {
  details.open = true;
  details.querySelector('input, select')?.focus();
}

const KEYS = {
  '/': find,
  '?': help,
  u: () => goTo('#undo-last'),
  j: () => move(1),
  k: () => move(-1),
  1: () => outcome('1'),
  2: () => outcome('2'),
  3: () => outcome('3'),
};
/** The arrows move only from row to row; elsewhere they scroll and choose as ever. */
const ARROWS = { ArrowDown: 1, ArrowUp: -1 };

function act({ key, target }) {
  if (key in ARROWS) return rowOf(target) !== null && target.type !== 'radio' && move(ARROWS[key]);
  return Object.hasOwn(KEYS, key) && KEYS[key]();
}

/** Enter on a mark would press the form's first button, which ends a shelf or the whole morning. */
function notByAccident(event) {
  const isMark = event.target.matches?.('form[data-keep] :is([type=checkbox], [type=radio])');
  if (event.key === 'Enter' && isMark) event.preventDefault();
}

function pressed(event) {
  if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) return;
  if (event.target.closest?.(TYPED_IN) || document.querySelector('dialog[open]')) return;
  if (readKept(OFF) !== true && act(event)) event.preventDefault();
}

/** The switches on the page say what holds. */
function drawSwitches() {
  for (const control of document.querySelectorAll('[data-keys-switch]')) {
    control.hidden = false;
    control.setAttribute('aria-checked', String(readKept(OFF) !== true));
  }
}

function clicked({ target }) {
  if (target.closest?.('[data-keys-switch]')) {
    if (readKept(OFF) === true) forget(OFF);
    else keep(OFF, true);
    drawSwitches();
  }
  if (target.closest?.('[data-close]')) target.closest('dialog')?.close();
}

export function startKeys() {
  document.addEventListener('keydown', notByAccident);
  document.addEventListener('keydown', pressed);
  document.addEventListener('click', clicked);
  document.addEventListener(SHOWN, drawSwitches);
  drawSwitches();
  if (location.hash === '#q') goTo('#q');
}
