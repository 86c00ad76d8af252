// Opens a form where it belongs without leaving the page, so that nothing typed elsewhere on it is lost. Without script the link does the same by a new page.
async function open(link) {
  const id = new URL(link.href).hash.slice(1);
  try {
    const answer = await fetch(link.href, { redirect: 'error' });
    const form = answer.ok ? new DOMParser().parseFromString(await answer.text(), 'text/html').getElementById(id) : null;
    if (!form) throw new Error('no form');
    link.replaceWith(form);
    form.querySelector('input:not([type=hidden]), select, textarea')?.focus();
  } catch {
    location.href = link.href;
  }
}

document.addEventListener('click', event => {
  const link = event.target.closest('a[data-open]');
  if (!link || event.ctrlKey || event.metaKey || event.shiftKey || event.button !== 0) return;
  event.preventDefault();
  open(link);
});
