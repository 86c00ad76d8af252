// Small conveniences; every page works without them.
import { guardDoublePost } from './double-post.js';
import { dropWhatArrived, forgetAtSignOut } from './keep.js';
import { searchAsYouType } from './search.js';
import { fillZone } from './zone.js';

guardDoublePost(document);
forgetAtSignOut(document);
dropWhatArrived();
document.querySelectorAll('form[data-search]').forEach(searchAsYouType);
document.querySelectorAll('[data-fill-zone]').forEach(fillZone);
