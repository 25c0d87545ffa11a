/** The outbox above the page: what waits in words, a button to send it now, and a choice for what was refused. */
import { refusedWords, waitingWords } from './outbox-words.js';

/** A live region just put on the page is heard only when it changes afterwards. */
const UNTIL_HEARD_MS = 50;

const outbox = () => document.querySelector('#outbox');
let waited = '';

/** Says one sentence aloud; `seen` also shows it above the page. */
export function say(sentence, seen) {
  const words = document.querySelector('#outbox-words');
  if (words === null) return;
  const tell = () => {
    words.dataset.heard = '';
    words.textContent = sentence;
    words.classList.toggle('unseen', seen === undefined);
  };
  if (words.dataset.heard === undefined) setTimeout(tell, UNTIL_HEARD_MS);
  else tell();
}

/** Lets the region settle on a page just shown. */
export function settle() {
  const words = document.querySelector('#outbox-words');
  if (words !== null) setTimeout(() => Object.assign(words.dataset, { heard: '' }), UNTIL_HEARD_MS);
}

/** Draws what waits; a first sending under way is not worth a word. */
export function drawBanner(items, acts) {
  if (outbox() === null) return;
  const told = items.filter(({ tries }) => tries > 0);
  const refused = told.filter(({ state }) => state === 'refused');
  const sentence = waitingWords(told);
  const words = document.querySelector('#outbox-words');
  if (sentence !== '' && words.textContent !== sentence) say(sentence, 'seen');
  else if (sentence === '' && words.textContent === waited) words.textContent = '';
  waited = sentence;
  outbox().classList.toggle('has-words', told.length > 0);
  outbox()
    .querySelector('ul')
    .replaceChildren(...refused.map((item) => refusedLine(item, acts)));
  const sendNow = document.querySelector('#outbox-send');
  sendNow.hidden = sentence === '';
  sendNow.onclick = acts.sendNow;
}

function refusedLine(item, acts) {
  const line = document.createElement('li');
  const words = document.createElement('span');
  words.textContent = refusedWords(item);
  const away = button('Throw it away', () => line.replaceChildren(words, ...surely()));
  const surely = () => [
    button('Yes, throw it away', () => acts.throwAway(item)),
    button('Keep it', () => line.replaceChildren(words, open, away)),
  ];
  const open = button('Open it', () => acts.open(item));
  line.append(words, open, away);
  return line;
}

function button(label, press) {
  const made = document.createElement('button');
  made.type = 'button';
  made.className = 'small';
  made.textContent = label;
  made.addEventListener('click', press);
  return made;
}
