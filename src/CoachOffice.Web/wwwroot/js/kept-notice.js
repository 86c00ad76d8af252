// On every page of the office: says where values typed on this device still wait to be saved.
import { keptLessons } from './keep.js';

export function sayWhatIsKept(main) {
  const account = document.body.dataset.account;
  if (!account || !main) return;
  const waiting = keptLessons(account).filter(k => !location.pathname.replaceAll('-', '').endsWith(k.lesson));
  if (waiting.length === 0) return;
  const box = document.createElement('div');
  box.className = 'warning';
  const text = document.createElement('p');
  text.append('Values typed on this device were not saved: ');
  waiting.forEach((k, i) => {
    const link = document.createElement('a');
    link.href = `/lessons/${k.lesson.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5')}`;
    link.textContent = `a lesson, ${new Date(k.kept.at).toLocaleString([], { day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' })}`;
    text.append(i > 0 ? ', ' : '', link);
  });
  box.append(text);
  main.prepend(box);
}
