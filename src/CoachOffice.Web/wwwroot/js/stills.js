// A picture copied elsewhere can be pasted: it goes into the form's file field and the form is sent as if it had been chosen.
const form = document.getElementById('add-still');
const field = document.getElementById('File');

if (form && field) {
  document.addEventListener('paste', event => {
    const picture = [...event.clipboardData?.files ?? []].find(file => file.type.startsWith('image/'));
    if (!picture) return;
    event.preventDefault();
    const chosen = new DataTransfer();
    chosen.items.add(picture);
    field.files = chosen.files;
    form.requestSubmit();
  });
}
