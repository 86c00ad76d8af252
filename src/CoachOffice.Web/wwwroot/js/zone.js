// Where the time zone is still empty, the browser's own is a good first guess.
export function fillZone(list) {
  const field = document.getElementById(list.dataset.fillZone);
  if (!field || field.value !== '') return;
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  if ([...list.options].some(option => option.value === zone)) field.value = zone;
}
