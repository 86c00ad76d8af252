// Where the device's clock is another than the practice's, times are shown in both; whoever chose a zone keeps it. Without script it is chosen in a form.
import { guardDoublePost } from './double-post.js';

guardDoublePost(document);
const shown = document.querySelector('[data-zone-shown]');
const here = Intl.DateTimeFormat().resolvedOptions().timeZone;
if (shown && here && !shown.dataset.zoneChosen && !document.querySelector('[role=alert]') && shown.dataset.zoneShown !== here && document.querySelector(`#zone option[value="${CSS.escape(here)}"]`)) {
  const address = new URL(location.href);
  address.searchParams.set('zone', here);
  location.replace(address);
}
