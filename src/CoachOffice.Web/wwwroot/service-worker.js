// Answers one question: what does a person see who opens a page while the office cannot be reached? It keeps that one page and its looks, and never a page of the office.
const shelf = 'coachoffice-away-1';
const away = '/away.html';
const files = [away, '/css/tokens.css', '/css/base.css', '/css/layout.css', '/css/parts.css', '/js/away.js', '/js/keep.js'];

addEventListener('install', event => event.waitUntil(caches.open(shelf).then(c => c.addAll(files)).then(() => skipWaiting())));
addEventListener('activate', event => event.waitUntil(caches.keys().then(names => Promise.all(names.filter(n => n !== shelf).map(n => caches.delete(n)))).then(() => clients.claim())));
addEventListener('fetch', event => {
  const path = new URL(event.request.url).pathname;
  if (event.request.mode === 'navigate' && event.request.method === 'GET') event.respondWith(fetch(event.request).catch(() => caches.match(away)));
  else if (files.includes(path)) event.respondWith(fetch(event.request).catch(() => caches.match(path)));
});
