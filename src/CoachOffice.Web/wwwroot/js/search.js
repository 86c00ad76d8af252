// Search as you type. It posts, so that no name lands in an address or a log; without script the form's button does the same.
const pause = 180;

export function searchAsYouType(form) {
  const results = document.getElementById(form.dataset.search);
  const input = form.querySelector('input[type=search]');
  if (!results || !input) return;
  let timer;
  let running;

  const run = async () => {
    running?.abort();
    running = new AbortController();
    try {
      const answer = await fetch(form.action, {
        method: 'POST',
        body: new FormData(form),
        headers: { 'X-Part': 'results' },
        redirect: 'error',
        signal: running.signal,
      });
      if (answer.ok) results.innerHTML = await answer.text();
    } catch (error) {
      // Superseded by the next letter, or no connection: what is shown stays.
      if (error.name !== 'AbortError') form.dataset.offline = 'yes';
    }
  };

  input.addEventListener('input', () => {
    clearTimeout(timer);
    timer = setTimeout(run, pause);
  });
}
