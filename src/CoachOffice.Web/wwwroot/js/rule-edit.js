// The rulebook's editor: rows come and go without a round trip, and what stands in the fields is checked while typing. Both work without script by the form's own buttons.
const pause = 600;

function freshRow(row) {
  const fresh = row.cloneNode(true);
  fresh.querySelector('.whole')?.remove();
  for (const field of fresh.querySelectorAll('input, textarea')) { field.value = ''; field.removeAttribute('value'); }
  for (const choice of fresh.querySelectorAll('select')) choice.selectedIndex = 0;
  return fresh;
}

// Buttons carry the place of their row for the server; after a move they are counted anew.
function countAnew(list) {
  [...list.children].forEach((row, i) => {
    for (const button of row.querySelectorAll('button[name=row]')) {
      const [verb, name] = button.value.split(':');
      button.value = `${verb}:${name}:${i}`;
      if (verb === 'up') button.disabled = i === 0;
    }
    for (const named of row.querySelectorAll('[aria-label]')) named.setAttribute('aria-label', named.getAttribute('aria-label').replace(/\d+/, i + 1));
    for (const said of row.querySelectorAll('.unseen')) said.textContent = said.textContent.replace(/\d+/, i + 1);
  });
}

function moveRows(form, changed) {
  form.addEventListener('click', event => {
    const button = event.target.closest('button[name=row]');
    if (!button) return;
    const [verb, name] = button.value.split(':');
    const list = form.querySelector(`[data-rows="${CSS.escape(name)}"]`);
    if (!list) return;
    event.preventDefault();
    const row = button.closest('li');
    if (verb === 'add') {
      list.append(freshRow(list.lastElementChild));
      list.lastElementChild.querySelector('input, textarea').focus();
    } else if (verb === 'up') {
      row.previousElementSibling?.before(row);
      button.focus();
    } else if (list.children.length > 1) {
      (row.nextElementSibling ?? row.previousElementSibling).querySelector('input, textarea').focus();
      row.remove();
    } else {
      row.replaceWith(freshRow(row));
      list.querySelector('input, textarea').focus();
    }
    countAnew(list);
    changed();
  });
}

function checkLive(form) {
  let timer;
  let running;

  const show = answer => {
    const fresh = new DOMParser().parseFromString(answer, 'text/html');
    for (const place of form.querySelectorAll('[data-faults-of]')) {
      const found = fresh.querySelector(`[data-faults-of="${CSS.escape(place.dataset.faultsOf)}"]`);
      const text = found?.innerHTML ?? '';
      if (place.innerHTML !== text) place.innerHTML = text;
    }
  };

  const ask = async () => {
    running?.abort();
    running = new AbortController();
    try {
      const answer = await fetch(form.dataset.check, { method: 'POST', body: new FormData(form), redirect: 'error', signal: running.signal });
      if (answer.ok) show(await answer.text());
    } catch (error) {
      // Superseded by the next letter, or no connection: the server checks again when it is sent.
      if (error.name !== 'AbortError') form.dataset.offline = 'yes';
    }
  };

  const later = () => {
    clearTimeout(timer);
    timer = setTimeout(ask, pause);
  };
  form.addEventListener('input', later);
  return later;
}

// A name too long for its field is told below it, for those who see; others hear it whole anyway.
function showWhole(form) {
  const look = () => {
    for (const field of form.querySelectorAll('.edit-rows input[list]')) {
      const said = field.closest('li').querySelector('.whole');
      if (field.scrollWidth <= field.clientWidth) said?.remove();
      else if (said) said.textContent = field.value;
      else field.closest('li').append(Object.assign(document.createElement('span'), { className: 'whole', ariaHidden: 'true', textContent: field.value }));
    }
  };
  form.addEventListener('input', look);
  addEventListener('resize', look);
  look();
}

// A fault of the text leads to its place.
function leadToLine(form) {
  const text = form.querySelector('textarea[name=text]');
  form.addEventListener('click', event => {
    const place = event.target.closest('[data-line]');
    if (!place || !text) return;
    const before = text.value.split('\n').slice(0, place.dataset.line - 1).join('\n').length;
    const at = before + (place.dataset.line > 1 ? 1 : 0) + Number(place.dataset.column) - 1;
    text.focus();
    text.setSelectionRange(at, at + 1);
  });
}

for (const form of document.querySelectorAll('form[data-check]')) {
  moveRows(form, checkLive(form));
  leadToLine(form);
  showWhole(form);
}
