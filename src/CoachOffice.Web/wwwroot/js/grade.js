// Asks the office to grade what stands in the fields; it saves nothing. While the office cannot be reached the device grades by itself and says so.
import { bandOf, gradeHere, gradeMark } from './grade-here.js';
import { split } from './swings.js';

const pause = 250;
const typed = /^([+-]?\d+(?:[.,]\d+)?)$/;

export function gradeLive(sheet, swings) {
  if (!sheet.dataset.grade) return;
  let timer;
  let running;

  const show = answer => {
    const fresh = new DOMParser().parseFromString(answer, 'text/html');
    for (const place of sheet.querySelectorAll('.measure-grade')) {
      const key = place.closest('[data-measure]').dataset.measure;
      const grade = fresh.querySelector(`[data-grade-of="${CSS.escape(key)}"]`);
      const text = grade?.innerHTML ?? '';
      if (place.innerHTML !== text) place.innerHTML = text;
      const wrong = grade?.querySelector('.error');
      const field = place.closest('[data-measure]').querySelector('[data-reading]');
      if (wrong) field.setAttribute('aria-invalid', 'true');
      else field.removeAttribute('aria-invalid');
    }
    const next = sheet.querySelector('[data-next-place]');
    if (next) next.innerHTML = fresh.querySelector('[data-next]')?.innerHTML ?? '';
    sheet.dataset.offline = 'no';
  };

  const showHere = () => {
    sheet.dataset.offline = 'yes';
    for (const row of sheet.querySelectorAll('[data-band]')) gradeRow(sheet, row, swings);
    sheet.querySelector('[data-next-place]')?.replaceChildren();
  };

  const ask = async () => {
    running?.abort();
    running = new AbortController();
    try {
      const answer = await fetch(sheet.dataset.grade, { method: 'POST', body: new FormData(sheet), redirect: 'error', signal: running.signal });
      if (answer.ok) show(await answer.text());
      else showHere();
    } catch (error) {
      if (error.name !== 'AbortError') showHere();
    }
  };

  const graded = event => event.target.matches('[data-reading], [name^="instruments"], [name^="frame-rates"], [name="FrameRate"], [name="Club"]');
  sheet.addEventListener('input', event => {
    if (!graded(event)) return;
    clearTimeout(timer);
    timer = setTimeout(ask, pause);
  });
  if ([...sheet.querySelectorAll('[data-reading]')].some(f => f.value !== '')) ask();
}

// Bands follow the club the page was opened with; after another club was picked only the office knows them.
function gradeRow(sheet, row, swings) {
  const place = row.querySelector('.measure-grade');
  const texts = split(swings.whole(row.querySelector('[data-reading]'))).filter(t => t !== '');
  const club = sheet.elements.Club;
  const sameClub = !club?.dataset.opened || club.value === club.dataset.opened;
  const instrument = row.querySelector('[name^="instruments"]')?.value;
  const rate = row.querySelector('[name^="frame-rates"]')?.value || (instrument === 'video' ? sheet.elements.FrameRate?.value : '') || '';
  const frames = typed.test(rate) ? Number(rate.replace(',', '.')) : null;
  if (texts.length === 0) return place.replaceChildren();
  const known = sameClub && texts.every(t => typed.test(t))
    ? gradeHere(bandOf(row.dataset.band), texts.map(t => Number(t.replace(',', '.'))), { eye: instrument === 'eye', frames, video: instrument === 'video' })
    : null;
  const note = document.createElement('span');
  note.className = 'small quiet';
  note.textContent = known ? ' graded on this device' : 'graded when the office answers';
  place.replaceChildren(...(known ? [gradeMark(known), note] : [note]));
}
