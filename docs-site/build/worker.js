// Keeps the site at hand without a network. Filled in by offline.ts; no page of it is written by hand.
const version = '__VERSION__';
const files = ['__FILES__'];

self.addEventListener('install', (event) => {
  const fresh = files.map((file) => new Request(file, { cache: 'reload' }));
  event.waitUntil(caches.open(version).then((cache) => cache.addAll(fresh)));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((n) => n !== version).map((n) => caches.delete(n))))
      .then(() => self.clients.claim()),
  );
});

// A new version waits here until a person asks for it: nothing changes under their hands.
self.addEventListener('message', (event) => {
  if (event.data === 'take over') self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== self.location.origin) return;
  event.respondWith(answer(event.request));
});

async function answer(request) {
  const cache = await caches.open(version);
  // A calculator's address holds its state; the page is the same for all of them.
  const ignoreSearch = request.mode === 'navigate';
  const kept = await cache.match(request, { ignoreSearch, ignoreVary: true });
  if (kept) return kept;
  try {
    const response = await fetch(request);
    if (response.ok && response.type === 'basic') await cache.put(request, response.clone());
    return response;
  } catch (offline) {
    const lost = request.mode === 'navigate' && (await cache.match('/404.html'));
    if (lost) return lost;
    throw offline;
  }
}
