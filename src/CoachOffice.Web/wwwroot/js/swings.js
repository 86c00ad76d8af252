// One swing at a time: each field shows the value of the swing that is being read, and the form still carries all of them in a row, a dash where one was not read.
const notRead = '-';
const upright = 90;
// A device reads dozens of balls: they are picked from a list.
const mostButtons = 12;

/** Splits "14 deg 15;-" into its values, a unit staying with its number. */
export function split(text) {
  const parts = text.replaceAll('\u2212', '-').split(/\s*;\s*|,\s+|\s+/).filter(p => p !== '');
  const values = [];
  for (const part of parts) {
    if (/^[a-z°%]/i.test(part) && values.length > 0) values[values.length - 1] += ` ${part}`;
    else values.push(/^[-\u2013\u2014]$/.test(part) ? '' : part);
  }
  return values;
}

/** The values as they stand in one field. */
export function join(values) {
  const last = values.findLastIndex(v => v !== '');
  return values.slice(0, last + 1).map(v => v === '' ? notRead : v).join(' ');
}

const number = text => /^[+-]?\d+([.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : null;
const moved = (text, by) => number(text) === null ? text : String(Math.round((number(text) + by) * 1e6) / 1e6);

export function bySwing(sheet) {
  const rows = [...sheet.querySelectorAll('input[data-reading]')].map(field => rowOf(field));
  let shown = 0;
  const strip = document.createElement('div');
  strip.className = 'swings';
  strip.setAttribute('role', 'group');
  strip.setAttribute('aria-label', 'Which swing is read');
  sheet.querySelector('[data-swings]')?.replaceChildren(strip);
  sheet.dataset.bySwing = 'yes';

  const count = () => Math.max(1, shown + 1, ...rows.map(r => r.values.length));

  const show = swing => {
    rows.forEach(r => r.take(shown));
    shown = swing;
    rows.forEach(r => r.show(shown));
    draw();
  };

  const draw = () => {
    const all = count();
    const swings = all > mostButtons ? [pick(all, shown, show)] : Array.from({ length: all }, (_, i) => button(`Swing ${i + 1}`, i === shown, () => show(i)));
    strip.replaceChildren(...swings, button('Another swing', false, () => show(count())));
  };

  sheet.addEventListener('input', event => {
    const row = rows.find(r => r.field === event.target);
    if (row) row.typed = true;
  });
  sheet.addEventListener('change', event => {
    rows.find(r => r.asRead === event.target)?.turn(shown);
    const row = rows.find(r => r.field === event.target);
    if (!row || split(row.field.value).length < 2) return;
    // Several values typed into one field are several swings.
    row.take(shown);
    row.show(shown);
    draw();
  });
  sheet.addEventListener('formdata', event => rows.forEach(r => event.formData.set(r.field.name, r.whole(shown))));
  // Values put back from this device stand in the fields as a whole.
  sheet.addEventListener('sheet-filled', () => {
    shown = 0;
    rows.forEach(r => r.fill());
    draw();
  });
  draw();
  rows.forEach(r => r.show(0));
  return { whole: field => rows.find(r => r.field === field).whole(shown) };
}

function pick(all, shown, show) {
  const list = document.createElement('select');
  list.setAttribute('aria-label', 'Swing');
  list.append(...Array.from({ length: all }, (_, i) => new Option(`Swing ${i + 1} of ${all}`, i, false, i === shown)));
  list.addEventListener('change', event => {
    event.stopPropagation();
    show(Number(list.value));
  });
  return list;
}

function button(text, pressed, press) {
  const made = document.createElement('button');
  made.type = 'button';
  made.className = 'swing';
  made.textContent = text;
  made.setAttribute('aria-pressed', String(pressed));
  made.addEventListener('click', press);
  return made;
}

// A line read from the ground is a tilt plus 90: the box only changes how the field is read, never what is kept.
function rowOf(field) {
  const row = field.closest('[data-measure]');
  const asRead = row.querySelector('input[name^="as-read"]');
  asRead?.removeAttribute('name');
  const others = document.createElement('p');
  others.className = 'other-swings small quiet';
  row.querySelector('.measure-entry').append(others);
  const self = {
    field,
    asRead,
    typed: false,
    values: split(field.value),
    withTyped(swing) {
      const values = [...self.values];
      while (values.length < swing) values.push('');
      const typed = split(field.value).map(v => asRead?.checked ? moved(v, -upright) : v);
      values.splice(swing, Math.max(1, typed.length), ...(typed.length > 0 ? typed : ['']));
      return values;
    },
    whole: swing => join(self.withTyped(swing)),
    take(swing) { self.values = split(self.whole(swing)); },
    show(swing) {
      const kept = self.values[swing] ?? '';
      field.value = asRead?.checked ? moved(kept, upright) : kept;
      self.typed = false;
      others.textContent = self.values.map((v, i) => v !== '' && i !== swing ? `swing ${i + 1}: ${v}` : '').filter(t => t !== '').join(' · ');
    },
    // What was typed before the box was ticked was read from the ground as well; what was kept is shown as it would read.
    turn(swing) {
      const wasTyped = self.typed && asRead.checked;
      if (!wasTyped) {
        asRead.checked = !asRead.checked;
        self.take(swing);
        asRead.checked = !asRead.checked;
        self.show(swing);
      }
      field.dispatchEvent(new Event('input', { bubbles: true }));
    },
    fill() { self.values = split(field.value); self.show(0); },
  };
  return self;
}
