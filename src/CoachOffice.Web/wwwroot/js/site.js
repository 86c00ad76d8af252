// Small conveniences; every page works without them.
import { guardDoublePost } from './double-post.js';
import { dropWhatArrived, forgetAtSignOut } from './keep.js';
import { sayWhatIsKept } from './kept-notice.js';
import { searchAsYouType } from './search.js';
import { fillZone } from './zone.js';

guardDoublePost(document);
forgetAtSignOut(document);
dropWhatArrived();
sayWhatIsKept(document.getElementById('main'));
document.querySelectorAll('form[data-search]').forEach(searchAsYouType);
document.querySelectorAll('[data-fill-zone]').forEach(fillZone);
if (document.body.dataset.account) navigator.serviceWorker?.register('/service-worker.js').catch(() => { /* no worker over plain http: kept values work all the same */ });
