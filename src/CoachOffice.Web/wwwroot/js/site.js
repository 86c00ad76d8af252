// Small conveniences; every page works without them.
import { guardDoublePost } from './double-post.js';
import { searchAsYouType } from './search.js';

guardDoublePost(document);
document.querySelectorAll('form[data-search]').forEach(searchAsYouType);
