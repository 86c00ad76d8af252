// Asks the server to grade what stands in the fields; it saves nothing. Without a connection the last grades go, for they may no longer fit.
const pause = 250;

export function gradeLive(sheet) {
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
  };

  const ask = async () => {
    running?.abort();
    running = new AbortController();
    try {
      const answer = await fetch(sheet.dataset.grade, { method: 'POST', body: new FormData(sheet), redirect: 'error', signal: running.signal });
      if (answer.ok) show(await answer.text());
    } catch (error) {
      if (error.name !== 'AbortError') sheet.dataset.offline = 'yes';
    }
  };

  const graded = event => event.target.matches('[data-reading], [name^="as-read"], [name^="instruments"], [name^="frame-rates"], [name="FrameRate"], [name="Club"]');
  sheet.addEventListener('input', event => {
    if (!graded(event)) return;
    clearTimeout(timer);
    timer = setTimeout(ask, pause);
  });
}
