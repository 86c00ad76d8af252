// Moving lessons in the calendar by pointer, long press or keys. Every move is the same form the page could send by itself: without script a lesson is moved on its own page.
const step = 15;
const pressFor = 350;
const edge = 10;

const calendar = () => document.getElementById('calendar');
const wide = () => matchMedia('(min-width: 44rem)').matches;
const pad = number => String(number).padStart(2, '0');

const timeOf = text => new Date(`${text}:00Z`);
const textOf = time => `${time.getUTCFullYear()}-${pad(time.getUTCMonth() + 1)}-${pad(time.getUTCDate())}T${pad(time.getUTCHours())}:${pad(time.getUTCMinutes())}`;
const shifted = (text, minutes) => textOf(new Date(timeOf(text).getTime() + minutes * 60000));

async function send(booking, change) {
  const form = document.getElementById('move-form');
  const was = { id: booking.dataset.id, version: booking.dataset.version, wasStart: booking.dataset.start, wasMinutes: booking.dataset.minutes, wasCoach: booking.dataset.coach };
  const values = { start: booking.dataset.start, minutes: booking.dataset.minutes, toCoach: booking.dataset.coach, ...was, ...change };
  for (const [name, value] of Object.entries(values)) form.elements[name].value = value;
  calendar().classList.add('busy');
  try {
    const answer = await fetch(form.action, { method: 'POST', body: new FormData(form) });
    show(await answer.text(), booking.dataset.id);
  } catch {
    calendar().classList.remove('busy');
    say('The office does not answer. The lesson stays where it was.');
  }
}

// The answer is the calendar as it is now, with what was done or why not, and the way back.
function show(page, id) {
  const fresh = new DOMParser().parseFromString(page, 'text/html').getElementById('main');
  if (!fresh?.querySelector('#calendar')) { location.reload(); return; }
  const main = document.getElementById('main');
  const at = calendar().scrollLeft;
  main.replaceChildren(...fresh.childNodes);
  calendar().scrollLeft = at;
  main.querySelector(`[data-id="${id}"]`)?.focus({ preventScroll: true });
}

function say(sentence) {
  const alert = document.createElement('div');
  alert.className = 'refusals';
  alert.setAttribute('role', 'alert');
  alert.append(sentence);
  calendar().before(alert);
}

function byKey(event) {
  const booking = event.target.closest?.('.booking');
  if (!booking || !event.altKey || !event.key.startsWith('Arrow')) return;
  event.preventDefault();
  const minutes = Number(booking.dataset.minutes);
  const days = event.key === 'ArrowLeft' ? -1 : event.key === 'ArrowRight' ? 1 : 0;
  const quarters = event.key === 'ArrowUp' ? -step : event.key === 'ArrowDown' ? step : 0;
  if (event.shiftKey && quarters) {
    if (minutes + quarters >= step) send(booking, { minutes: minutes + quarters });
  } else if (quarters || days) {
    send(booking, { start: shifted(booking.dataset.start, quarters + days * 24 * 60) });
  }
}

// A pointer over a column says which day or coach and which quarter of an hour.
function place(x, y) {
  const column = [...calendar().querySelectorAll('.day')].find(day => { const box = day.getBoundingClientRect(); return x >= box.left && x < box.right; });
  if (!column) return null;
  const grid = column.querySelector('.quarters').getBoundingClientRect();
  const row = parseFloat(getComputedStyle(document.documentElement).fontSize);
  return { column, row: (y - grid.top) / row };
}

class Drag {
  constructor(booking, event) {
    this.booking = booking;
    this.resizes = event.clientY > booking.getBoundingClientRect().bottom - edge;
    this.from = place(event.clientX, event.clientY);
    this.row = Number([...booking.classList].find(name => /^s\d+$/.test(name)).slice(1));
    this.rows = Number(booking.dataset.minutes) / step;
    this.ghost = document.createElement('div');
    booking.classList.add('dragged');
    this.to(event.clientX, event.clientY);
  }

  to(x, y) {
    const now = place(x, y);
    if (!now || !this.from) return;
    const by = Math.round(now.row - this.from.row);
    this.minutes = this.resizes ? Math.max(step, (Math.round(this.rows) + by) * step) : Number(this.booking.dataset.minutes);
    this.by = this.resizes ? 0 : Math.max(by, -this.row);
    this.column = this.resizes ? this.booking.closest('.day') : now.column;
    this.ghost.className = `ghost s${Math.min(95, this.row + this.by)} n${Math.max(1, Math.ceil(this.minutes / step))} l0of1`;
    this.ghost.textContent = this.start().slice(11);
    this.column.querySelector('.quarters').append(this.ghost);
  }

  start() {
    const moved = shifted(this.booking.dataset.start, this.by * step);
    return `${this.column.dataset.day}${moved.slice(10)}`;
  }

  end(drop) {
    this.ghost.remove();
    this.booking.classList.remove('dragged');
    if (!drop || !this.column) return;
    const change = { start: this.start(), minutes: this.minutes };
    if (this.column.dataset.coach) change.toCoach = this.column.dataset.coach;
    const same = change.start === this.booking.dataset.start && String(change.minutes) === this.booking.dataset.minutes && (!change.toCoach || change.toCoach === this.booking.dataset.coach);
    if (!same) send(this.booking, change);
  }
}

let drag;
let waiting;

function begin(event) {
  const booking = event.target.closest?.('.booking');
  if (!booking || event.button !== 0 || !wide() || drag) return;
  const press = { booking, x: event.clientX, y: event.clientY, touch: event.pointerType === 'touch' };
  waiting = press;
  // A finger that stays means the lesson, one that moves means the page.
  if (press.touch) press.timer = setTimeout(() => { if (waiting === press) { waiting = null; drag = new Drag(booking, { clientX: press.x, clientY: press.y }); navigator.vibrate?.(10); } }, pressFor);
}

function carry(event) {
  if (drag) { drag.to(event.clientX, event.clientY); return; }
  if (!waiting || Math.hypot(event.clientX - waiting.x, event.clientY - waiting.y) < 5) return;
  const press = waiting;
  stopWaiting();
  if (!press.touch) { drag = new Drag(press.booking, { clientX: press.x, clientY: press.y }); drag.to(event.clientX, event.clientY); }
}

function stopWaiting() {
  clearTimeout(waiting?.timer);
  waiting = null;
}

function finish(drop) {
  stopWaiting();
  if (!drag) return;
  const done = drag;
  drag = null;
  // The click that follows a drag opens nothing; only that one.
  const swallow = event => { event.preventDefault(); event.stopPropagation(); };
  addEventListener('click', swallow, { capture: true, once: true });
  setTimeout(() => removeEventListener('click', swallow, { capture: true }), 60);
  done.end(drop);
}

// A press on a free time begins a booking there.
function open(event) {
  const grid = event.target.closest?.('.quarters');
  if (!grid || event.target.closest('.booking') || !wide()) return;
  const at = place(event.clientX, event.clientY);
  if (!at) return;
  const minutes = Number(calendar().dataset.first) * 60 + Math.floor(at.row / 2) * 30;
  const link = new URL(at.column.querySelector('.add a').href);
  link.searchParams.set('at', `${pad(Math.floor(minutes / 60))}:${pad(minutes % 60)}`);
  location.href = link;
}

document.addEventListener('keydown', byKey);
document.addEventListener('keydown', event => { if (event.key === 'Escape') finish(false); });
document.addEventListener('pointerdown', begin);
document.addEventListener('pointermove', carry);
document.addEventListener('pointerup', () => finish(true));
document.addEventListener('pointercancel', () => { if (!drag) stopWaiting(); });
document.addEventListener('touchmove', event => { if (drag) { event.preventDefault(); carry({ clientX: event.touches[0].clientX, clientY: event.touches[0].clientY }); } }, { passive: false });
document.addEventListener('touchend', () => finish(true));
document.addEventListener('contextmenu', event => { if (drag || waiting?.touch) event.preventDefault(); });
document.addEventListener('dragstart', event => { if (event.target.closest?.('.booking')) event.preventDefault(); });
document.addEventListener('click', open);
