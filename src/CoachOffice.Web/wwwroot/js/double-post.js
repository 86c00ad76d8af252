// A second tap on Save while the first is under way sends nothing. The server refuses repeats too; this only spares the person the message.
export function guardDoublePost(root) {
  root.addEventListener('submit', event => {
    const form = event.target;
    if (form.method !== 'post' || event.defaultPrevented) return;
    if (form.dataset.sent) {
      event.preventDefault();
      return;
    }
    form.dataset.sent = 'yes';
    // A page kept by the browser comes back with its state: let it send again.
    addEventListener('pageshow', () => delete form.dataset.sent, { once: true });
  });
}
