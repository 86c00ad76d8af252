// Shown while the office cannot be reached: what this device still keeps, and a way back.
import { countKept } from './keep.js';

const kept = countKept();
document.getElementById('kept-here').textContent = kept === 0 ? 'Nothing typed is waiting on this device.'
  : kept === 1 ? 'What you typed for one lesson is kept on this device; open that lesson when the office answers, and it is offered to you.'
  : `What you typed for ${kept} lessons is kept on this device; open them when the office answers, and it is offered to you.`;
document.getElementById('again').href = location.href;
addEventListener('online', () => location.reload());
