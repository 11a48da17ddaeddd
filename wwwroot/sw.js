// @ts-check
/// <reference lib="webworker" />
/**
 * The page without its service: whatever was fetched once is kept, and given when the network gives nothing. The
 * network always comes first, so that nothing old is shown while there is something new.
 */

const SHELF = 'panel-service-1';
const MOST_PARTS = 300;
const scope = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));

scope.addEventListener('install', () => void scope.skipWaiting());
scope.addEventListener('activate', (event) => event.waitUntil(scope.clients.claim()));

scope.addEventListener('message', (event) => event.waitUntil(keepAll(event.data, event.ports[0])));

/** @param {string[]} addresses what the page fetched before @param {MessagePort} port told when it is kept */
async function keepAll(addresses, port) {
  const shelf = await caches.open(SHELF);
  const ours = addresses.map((one) => new URL(one, location.href)).filter((one) => one.origin === location.origin && !one.pathname.endsWith('/progress'));
  await Promise.all(ours.map(async (one) => {
    const response = await fetch(one);
    if (response.ok) await shelf.put(one, response);
  }));
  port.postMessage('kept');
}

scope.addEventListener('fetch', (event) => {
  const { request } = event;
  const address = new URL(request.url);
  if (request.method !== 'GET' || address.origin !== location.origin || address.pathname.endsWith('/progress')) return;
  // News of a search under way is never old news.
  if (request.cache === 'no-store') return;
  event.respondWith(answer(request));
});

/** @param {Request} request */
async function answer(request) {
  const shelf = await caches.open(SHELF);
  try {
    const response = await fetch(request);
    if (response.ok) await store(shelf, request, response.clone());
    return response;
  } catch (fault) {
    const kept = await shelf.match(request, { ignoreSearch: request.mode === 'navigate' });
    if (kept) return kept;
    throw fault;
  }
}

/** Parts of old plans make room for new ones; the page itself stays. @param {Cache} shelf @param {Request} request @param {Response} response */
async function store(shelf, request, response) {
  await shelf.put(request, response);
  const parts = (await shelf.keys()).filter((kept) => kept.url.includes('/api/plans/'));
  await Promise.all(parts.slice(0, Math.max(0, parts.length - MOST_PARTS)).map((old) => shelf.delete(old)));
}
