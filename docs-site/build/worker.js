// Keeps the site at hand without a network. Bundled, with the list of its files, by offline.ts.
import { clientsClaim } from 'workbox-core';
import { cleanupOutdatedCaches, matchPrecache, precacheAndRoute } from 'workbox-precaching';
import { registerRoute, setCatchHandler } from 'workbox-routing';
import { NetworkFirst } from 'workbox-strategies';

/** What was visited beyond the files kept from the start; it goes with the version it belonged to. */
const VISITED = 'visited';

clientsClaim();
cleanupOutdatedCaches();
// A calculator's address holds its state; the page is the same for all of them.
precacheAndRoute(FILES, { ignoreURLParametersMatching: [/./] });
registerRoute(
  ({ sameOrigin }) => sameOrigin,
  new NetworkFirst({ cacheName: VISITED, matchOptions: { ignoreSearch: true, ignoreVary: true } }),
);
setCatchHandler(async ({ request }) => {
  const lost = request.mode === 'navigate' ? await matchPrecache('/404.html') : undefined;
  return lost ?? Response.error();
});

self.addEventListener('activate', (event) => event.waitUntil(caches.delete(VISITED)));

// A new version waits here until a person asks for it: nothing changes under their hands.
self.addEventListener('message', ({ data }) => {
  if (data === 'take over') self.skipWaiting();
});
