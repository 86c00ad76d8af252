// Keeps what was typed on this device until the office has it: by account and record, gone after a save and at sign-out. Sent once, when the office can be reached by the same person.
const prefix = 'coachoffice-kept:';
const skipped = new Set(['Version', 'StudentId', 'Send', 'form-proof']);
const every = 5000;

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
  form.dispatchEvent(new Event('sheet-filled'));
  form.querySelector('[data-reading]')?.dispatchEvent(new Event('input', { bubbles: true }));
}

// How a measure was taken says nothing without a value, and which sheet is open is no value at all.
const said = values => JSON.stringify(Object.entries(values).filter(([name, value]) => {
  const taken = /^(?:instruments|frame-rates)\[(.+)\]$/.exec(name);
  return value && name !== 'SheetKey' && (!taken || values[`readings[${taken[1]}]`]);
}).sort());
const same = (a, b) => said(a) === said(b);
const clock = at => new Date(at).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });

function read(key) {
  try { return JSON.parse(localStorage.getItem(key)); } catch { return null; }
}

function write(key, value) {
  try { localStorage.setItem(key, JSON.stringify(value)); return true; } catch { return false; }
}

// Can the office be reached, and by whom? Nobody's page is read: an answer is a few words, and a sign-in page counts as signed out.
async function reach(form) {
  try {
    const answer = await fetch(form.dataset.state, { redirect: 'manual', cache: 'no-store', headers: { Accept: 'application/json' } });
    if (answer.type === 'opaqueredirect' || answer.status === 401 || answer.status === 403) return { signedOut: true };
    return answer.ok ? await answer.json() : null;
  } catch {
    return null;
  }
}

export function keepOnDevice(form) {
  const key = prefix + form.dataset.keep;
  const version = Number(form.dataset.version);
  const state = document.getElementById('keep-state');
  const say = text => { if (state) state.textContent = text; };
  const kept = read(key);
  let waiting;
  let sure = false;
  if (kept?.sent && version > kept.version) localStorage.removeItem(key);
  else if (kept && !same(kept.values, valuesOf(form))) offer(form, key, kept);

  form.addEventListener('input', () => {
    const entry = { version, at: Date.now(), values: valuesOf(form), sent: false };
    say(write(key, entry) ? `Kept on this device at ${clock(entry.at)}, not saved yet.` : 'This device keeps nothing: save often.');
  });

  const send = async submitter => {
    clearTimeout(waiting);
    const answer = form.dataset.state ? await reach(form) : { account: form.dataset.account };
    if (answer === null) {
      say('The office cannot be reached. Everything is kept on this device and goes out by itself when it answers; you can go on reading.');
      waiting = setTimeout(() => send(submitter), every);
      return;
    }
    if (answer.signedOut) { say('You are signed out. Everything is still kept on this device: sign in again in another tab, then save here.'); return; }
    if (form.dataset.account && answer.account !== form.dataset.account) { say('Somebody else is signed in now, so nothing was sent. It is still kept on this device for you.'); return; }
    if (answer.proof) form.elements['form-proof'].value = answer.proof;
    // Another sheet is fetched, not saved: what was typed is still only here.
    const saves = !submitter?.matches('[formaction*="handler=sheet"]');
    write(key, { version, at: Date.now(), values: valuesOf(form), sent: saves });
    sure = true;
    form.requestSubmit(submitter ?? undefined);
  };

  form.addEventListener('submit', event => {
    if (sure) { sure = false; return; }
    event.preventDefault();
    event.stopImmediatePropagation();
    write(key, { version, at: Date.now(), values: valuesOf(form), sent: false });
    send(event.submitter);
  });
  addEventListener('online', () => { if (waiting) form.requestSubmit(); });
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

/** Lessons of an account with values that only this device has. */
export function keptLessons(account) {
  const begin = `${prefix}lesson:${account}:`;
  return Object.keys(localStorage).filter(k => k.startsWith(begin)).map(k => ({ lesson: k.slice(begin.length), kept: read(k) })).filter(k => k.kept && !k.kept.sent);
}

/** How many records have values that only this device has, whoever typed them. */
export const countKept = () => Object.keys(localStorage).filter(k => k.startsWith(prefix) && read(k)?.sent === false).length;
