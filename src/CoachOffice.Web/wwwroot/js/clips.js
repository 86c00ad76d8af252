// Sends a clip in parts by the open tus protocol, so that a drop costs one part at most and the same file chosen again goes on where it stopped.
const form = document.getElementById('add-clip');
const Part = 8 * 1024 * 1024;
const Tries = 6;

const wait = ms => new Promise(done => setTimeout(done, ms));
const proof = () => form.querySelector('[name=form-proof]').value;
const ask = (method, address, headers = {}, body = undefined, signal = undefined) =>
  fetch(address, { method, headers: { 'Tus-Resumable': '1.0.0', 'X-Form-Proof': proof(), ...headers }, body, signal, redirect: 'manual' });
// Without the file's name, which may be a person's.
const keyOf = file => `clip:${form.dataset.uploads}:${file.size}:${file.lastModified}`;

if (form) {
  const panel = form.querySelector('.sending');
  const bar = panel.querySelector('progress');
  const said = panel.querySelector('[role=status]');
  let stopped = null;

  const show = (offset, size) => {
    bar.value = 100 * offset / size;
    said.textContent = `${Math.floor(100 * offset / size)} % of ${Math.ceil(size / 1e6)} MB`;
  };

  const begin = async file => {
    const known = localStorage.getItem(keyOf(file));
    if (known) {
      const there = await ask('HEAD', known);
      if (there.ok) return { address: known, offset: Number(there.headers.get('Upload-Offset')) };
    }
    const made = await ask('POST', form.dataset.uploads, { 'Upload-Length': String(file.size) });
    if (made.status !== 201) throw new Error(made.status === 0 ? 'You are signed out. Sign in and choose the file again.' : await made.text());
    const address = made.headers.get('Location');
    localStorage.setItem(keyOf(file), address);
    return { address, offset: 0 };
  };

  const send = async file => {
    let { address, offset } = await begin(file);
    show(offset, file.size);
    for (let failed = 0; offset < file.size;) {
      if (stopped.signal.aborted) return ask('DELETE', address);
      try {
        const answer = await ask('PATCH', address, { 'Content-Type': 'application/offset+octet-stream', 'Upload-Offset': String(offset) }, file.slice(offset, offset + Part), stopped.signal);
        if (answer.status === 204) {
          offset = Number(answer.headers.get('Upload-Offset'));
          failed = 0;
          show(offset, file.size);
          continue;
        }
        if (![409, 423].includes(answer.status) && answer.status < 500) throw Object.assign(new Error(await answer.text()), { final: true });
      } catch (fault) {
        if (stopped.signal.aborted) continue;
        if (fault.final) throw fault;
      }
      if (++failed > Tries) throw new Error('The connection is gone. Choose the same file again later: it goes on where it stopped.');
      said.textContent = 'The connection dropped; trying again.';
      await wait(1000 * 2 ** failed);
      const there = await ask('HEAD', address).catch(() => null);
      if (there?.ok) offset = Number(there.headers.get('Upload-Offset'));
      else if (there?.status === 404) throw Object.assign(new Error('What had arrived is gone. Choose the file again.'), { final: true });
    }
    return null;
  };

  form.addEventListener('submit', async event => {
    const file = form.elements.File.files[0];
    if (!file) return;
    event.preventDefault();
    stopped = new AbortController();
    panel.hidden = false;
    try {
      await send(file);
      localStorage.removeItem(keyOf(file));
      location.assign(location.pathname);
    } catch (fault) {
      if (fault.final) localStorage.removeItem(keyOf(file));
      said.textContent = fault.message;
    }
  });
  panel.querySelector('.stop').addEventListener('click', () => stopped?.abort());
}
