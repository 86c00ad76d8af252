// The lesson sheet: one swing at a time, grades while one types, Enter for the next field, and nothing typed is ever lost. The page works without any of it.
import { gradeLive } from './grade.js';
import { keepOnDevice } from './keep.js';
import { bySwing } from './swings.js';

const sheet = document.getElementById('sheet');
if (sheet) {
  const swings = bySwing(sheet);
  keepOnDevice(sheet);
  gradeLive(sheet, swings);
  const fields = [...sheet.querySelectorAll('input[data-reading]')];
  sheet.addEventListener('keydown', event => {
    const at = fields.indexOf(event.target);
    if (event.key !== 'Enter' || at < 0) return;
    event.preventDefault();
    (fields[at + 1] ?? document.getElementById('Observations'))?.focus();
  });
  // Another sheet is fetched with everything as typed.
  sheet.elements.SheetKey?.addEventListener('change', () => sheet.requestSubmit(sheet.querySelector('[data-pick-sheet]')));
}
