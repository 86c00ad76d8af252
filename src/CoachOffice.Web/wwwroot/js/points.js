// Points on a still: touch, mouse or keys move them; the number fields stay the truth, and the page works without any of this.
const form = document.getElementById('marks');
const picture = document.getElementById('picture');
const svg = 'http://www.w3.org/2000/svg';
const near = { touch: 26, other: 12 };
const pause = 200;

if (form && picture) start();

function start() {
  const { width, height } = picture.viewBox.baseVal;
  const marks = new Map([...picture.querySelectorAll('.mark')].map(mark => [mark.dataset.landmark, mark]));
  const rows = new Map([...form.querySelectorAll('[data-point]')].map(row => [row.dataset.point, row]));
  const loupe = makeLoupe(width, height);
  const now = document.getElementById('now');
  let active = null;
  let dragged = null;

  const field = (word, side) => form.elements[`${side}[${word}]`];
  const read = (word, side) => {
    const text = field(word, side).value.replace(',', '.').trim();
    return text === '' || Number.isNaN(Number(text)) ? null : Number(text);
  };
  const placeOf = word => {
    const x = read(word, 'x');
    const y = read(word, 'y');
    return x === null || y === null ? null : { x, y };
  };

  const draw = word => {
    const mark = marks.get(word);
    const at = placeOf(word);
    mark.setAttribute('visibility', at ? 'visible' : 'hidden');
    mark.setAttribute('tabindex', at ? '0' : '-1');
    if (at) mark.setAttribute('transform', `translate(${at.x} ${at.y}) scale(${1 / picture.getScreenCTM().a})`);
    mark.setAttribute('aria-label', at ? `${mark.dataset.name}, at ${at.x}, ${at.y}` : mark.dataset.name);
    for (const line of picture.querySelectorAll(`line[data-from="${word}"], line[data-to="${word}"]`)) {
      const from = placeOf(line.dataset.from);
      const to = placeOf(line.dataset.to);
      line.setAttribute('visibility', from && to ? 'visible' : 'hidden');
      if (!from || !to) continue;
      for (const [name, value] of [['x1', from.x], ['y1', from.y], ['x2', to.x], ['y2', to.y]]) line.setAttribute(name, value);
    }
  };

  const pick = word => {
    active = word;
    for (const [name, row] of rows) row.classList.toggle('active', name === word);
    for (const [name, mark] of marks) mark.classList.toggle('active', name === word);
    const said = word ? `${placeOf(word) ? 'Moving' : 'Mark'} ${marks.get(word).dataset.name}` : 'Every point is marked; drag one to move it.';
    if (now.firstElementChild.textContent !== said) now.firstElementChild.textContent = said;
    now.lastElementChild.hidden = !word || Boolean(placeOf(word));
  };
  // The one after this in the order of marking that is not marked yet; from the last on to the first.
  const pickNext = () => {
    const words = [...rows.keys()];
    const after = words.indexOf(active) + 1;
    pick([...words.slice(after), ...words.slice(0, after)].find(word => !placeOf(word)) ?? null);
  };
  const pickOpen = () => { if (!active || placeOf(active)) pickNext(); };

  const put = (word, at) => {
    const inside = (value, most) => Math.min(most, Math.max(0, Math.round(value * 10) / 10));
    field(word, 'x').value = at ? inside(at.x, width) : '';
    field(word, 'y').value = at ? inside(at.y, height) : '';
    draw(word);
    measure();
  };

  const onPicture = event => {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(picture.getScreenCTM().inverse());
    return { x: at.x, y: at.y };
  };
  const hit = (at, event) => {
    const reach = (event.pointerType === 'touch' ? near.touch : near.other) / picture.getScreenCTM().a;
    const found = [...marks.keys()].map(word => ({ word, at: placeOf(word) })).filter(mark => mark.at)
      .map(mark => ({ word: mark.word, away: Math.hypot(mark.at.x - at.x, mark.at.y - at.y) })).filter(mark => mark.away <= reach)
      .sort((a, b) => a.away - b.away);
    return found[0]?.word;
  };

  picture.addEventListener('pointerdown', event => {
    if (event.button !== 0) return;
    const at = onPicture(event);
    const held = hit(at, event);
    const word = held ?? active;
    if (!word) return;
    event.preventDefault();
    picture.setPointerCapture(event.pointerId);
    // A point that is taken up does not jump under the finger; a new one lies where it was set.
    const from = held ? placeOf(held) : at;
    dragged = { word, fresh: !held, dx: from.x - at.x, dy: from.y - at.y };
    pick(word);
    put(word, from);
    loupe.show(from);
  });
  picture.addEventListener('pointermove', event => {
    if (!dragged) return;
    const at = onPicture(event);
    put(dragged.word, { x: at.x + dragged.dx, y: at.y + dragged.dy });
    loupe.show(placeOf(dragged.word));
  });
  const release = () => {
    if (!dragged) return;
    marks.get(dragged.word).focus({ preventScroll: true });
    if (dragged.fresh) pickNext();
    dragged = null;
    loupe.hide();
  };
  picture.addEventListener('pointerup', release);
  picture.addEventListener('pointercancel', release);

  const steps = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  picture.addEventListener('keydown', event => {
    const word = event.target.closest?.('.mark')?.dataset.landmark;
    const at = word && placeOf(word);
    if (!at) return;
    if (event.key === 'Delete' || event.key === 'Backspace') {
      event.preventDefault();
      put(word, null);
      pick(word);
      loupe.hide();
      rows.get(word).querySelector('.pick').focus();
    } else if (event.key in steps) {
      event.preventDefault();
      const by = event.shiftKey ? 10 : 1;
      put(word, { x: at.x + steps[event.key][0] * by, y: at.y + steps[event.key][1] * by });
      loupe.show(placeOf(word));
    }
  });
  picture.addEventListener('focusin', event => {
    const word = event.target.closest?.('.mark')?.dataset.landmark;
    if (word) pick(word);
    if (word && !dragged && event.target.matches(':focus-visible')) loupe.show(placeOf(word));
  });
  picture.addEventListener('focusout', () => { if (!dragged) { loupe.hide(); pickOpen(); } });

  for (const [word, row] of rows) {
    const button = row.querySelector('.pick');
    row.querySelector('.name').hidden = true;
    button.hidden = false;
    button.addEventListener('click', event => {
      pick(word);
      // By key: into the middle, from where arrows take it.
      if (event.detail !== 0) return;
      if (!placeOf(word)) put(word, { x: width / 2, y: height / 2 });
      marks.get(word).focus();
    });
    row.addEventListener('input', () => { draw(word); pickOpen(); });
  }
  for (const mark of marks.values()) mark.setAttribute('role', 'button');

  picture.append(loupe.element);
  picture.classList.add('live');
  document.getElementById('easel-help').hidden = false;
  now.hidden = false;
  now.lastElementChild.addEventListener('click', pickNext);
  const drawAll = () => { for (const word of marks.keys()) draw(word); };
  new ResizeObserver(drawAll).observe(picture);
  drawAll();
  pickNext();
  const measure = measureLive();
}

// A round glass beside the finger: three times what the page shows.
function makeLoupe(width, height) {
  const size = Math.min(width, height) * .3;
  const part = size / 3;
  const element = document.createElementNS(svg, 'svg');
  const image = document.createElementNS(svg, 'image');
  const ground = document.createElementNS(svg, 'rect');
  const cross = document.createElementNS(svg, 'path');
  image.setAttribute('href', picture.querySelector('image').getAttribute('href'));
  image.setAttribute('width', width);
  image.setAttribute('height', height);
  element.setAttribute('class', 'loupe');
  element.setAttribute('width', size);
  element.setAttribute('height', size);
  element.setAttribute('visibility', 'hidden');
  element.setAttribute('aria-hidden', 'true');
  ground.setAttribute('width', part);
  ground.setAttribute('height', part);
  element.append(ground, image, cross);

  return {
    element,
    show(at) {
      const left = at.x - part / 2;
      const top = at.y - part / 2;
      element.setAttribute('viewBox', `${left} ${top} ${part} ${part}`);
      ground.setAttribute('x', left);
      ground.setAttribute('y', top);
      cross.setAttribute('d', `M${left} ${at.y}H${at.x - 2}M${at.x + 2} ${at.y}H${left + part}M${at.x} ${top}V${at.y - 2}M${at.x} ${at.y + 2}V${top + part}M${left} ${top}h${part}v${part}h${-part}z`);
      const above = at.y - size * 1.25;
      element.setAttribute('x', Math.min(width - size, Math.max(0, at.x - size / 2)));
      element.setAttribute('y', above >= 0 ? above : Math.min(height - size, at.y + size * .25));
      element.setAttribute('visibility', 'visible');
    },
    hide() { element.setAttribute('visibility', 'hidden'); },
  };
}

// Asks the server what the points say; it saves nothing.
function measureLive() {
  const values = document.getElementById('values');
  const left = new Set();
  let timer;
  let running;
  let unsaved = false;

  const ask = async () => {
    running?.abort();
    running = new AbortController();
    try {
      const answer = await fetch(form.dataset.measure, { method: 'POST', body: new FormData(form), redirect: 'error', signal: running.signal });
      if (!answer.ok) return say('The office did not compute that. Your points stay in the fields.');
      const fresh = new DOMParser().parseFromString(await answer.text(), 'text/html');
      for (const box of fresh.querySelectorAll('[name=Put]')) if (left.has(box.value)) box.removeAttribute('checked');
      values.replaceChildren(...fresh.body.childNodes);
    } catch (error) {
      if (error.name !== 'AbortError') say('The office cannot be reached, so nothing is computed. Your points stay in the fields: keep this page open and save when it is back.');
    }
  };

  // The last values no longer fit the points.
  const say = sentence => {
    const line = document.createElement('p');
    line.textContent = sentence;
    values.replaceChildren(line);
  };

  const later = () => {
    unsaved = true;
    clearTimeout(timer);
    timer = setTimeout(ask, pause);
  };
  form.addEventListener('input', event => {
    if (event.target.name === 'Put') left[event.target.checked ? 'delete' : 'add'](event.target.value);
    else later();
  });
  form.addEventListener('submit', () => { unsaved = false; });
  addEventListener('beforeunload', event => { if (unsaved) event.preventDefault(); });
  return later;
}
