// Keeps what was typed on this device until the office has it: by account and record, gone after a save and at sign-out.
const prefix = 'coachoffice-kept:';
const skipped = new Set(['Version', 'StudentId', 'form-proof']);

function valuesOf(form) {
  const values = {};
  for (const [name, value] of new FormData(form)) if (!skipped.has(name) && !name.startsWith('units[')) values[name] = value;
  return values;
}

function putBack(form, values) {
  for (const field of form.elements) {
    if (!field.name || skipped.has(field.name) || field.type === 'hidden') continue;
    if (field.type === 'checkbox') field.checked = field.name in values;
    else if (field.name in values) field.value = values[field.name];
  }
  form.dispatchEvent(new Event('input', { bubbles: true }));
  form.querySelector('[data-reading]')?.dispatchEvent(new Event('input', { bubbles: true }));
}

const same = (a, b) => JSON.stringify(Object.entries(a).filter(e => e[1]).sort()) === JSON.stringify(Object.entries(b).filter(e => e[1]).sort());
const clock = at => new Date(at).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });

function read(key) {
  try { return JSON.parse(localStorage.getItem(key)); } catch { return null; }
}

function write(key, value) {
  try { localStorage.setItem(key, JSON.stringify(value)); return true; } catch { return false; }
}

export function keepOnDevice(form) {
  const key = prefix + form.dataset.keep;
  const version = Number(form.dataset.version);
  const state = document.getElementById('keep-state');
  const say = text => { if (state) state.textContent = text; };
  const kept = read(key);
  if (kept?.sent && version > kept.version) localStorage.removeItem(key);
  else if (kept && !same(kept.values, valuesOf(form))) offer(form, key, kept);

  form.addEventListener('input', () => {
    const entry = { version, at: Date.now(), values: valuesOf(form), sent: false };
    say(write(key, entry) ? `Kept on this device at ${clock(entry.at)}, not saved yet.` : 'This device keeps nothing: save often.');
  });
  form.addEventListener('submit', event => {
    if (!navigator.onLine) {
      event.preventDefault();
      event.stopImmediatePropagation();
      say('No connection. Everything is kept on this device; save again when it is back.');
      return;
    }
    write(key, { version, at: Date.now(), values: valuesOf(form), sent: true });
  });
  addEventListener('online', () => say('The connection is back: you can save now.'));
}

function offer(form, key, kept) {
  const box = document.getElementById('kept');
  if (!box) return;
  box.querySelector('p').textContent = `Values typed on this device at ${clock(kept.at)} were not saved.`;
  box.hidden = false;
  box.querySelector('[data-kept=back]').addEventListener('click', () => { putBack(form, kept.values); box.hidden = true; });
  box.querySelector('[data-kept=drop]').addEventListener('click', () => { localStorage.removeItem(key); box.hidden = true; });
}

export function forgetAtSignOut(root) {
  root.addEventListener('submit', event => {
    if (!event.target.action?.endsWith('/sign-out')) return;
    for (const key of Object.keys(localStorage)) if (key.startsWith(prefix)) localStorage.removeItem(key);
  });
}

// Sent from the sheet and now on the plan it led to: the office has it.
export function dropWhatArrived() {
  if (!location.pathname.startsWith('/plans/')) return;
  for (const key of Object.keys(localStorage)) if (key.startsWith(prefix) && read(key)?.sent) localStorage.removeItem(key);
}
