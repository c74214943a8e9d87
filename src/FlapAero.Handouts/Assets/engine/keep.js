"use strict";
// On a web space: keeps what lies in this folder, so that the next page comes at once, and without a network. Where any of it changes,
// this file changes with it; the pages then come anew, all of them, once those before are closed.
const FILES = [/*files*/];
const OURS = `flapaero ${registration.scope} `, KEPT = OURS + "/*version*/";

addEventListener("install", (event) => event.waitUntil((async () => {
  const kept = await caches.open(KEPT);
  await kept.addAll(FILES.map((name) => new Request(name, { cache: "no-cache" })));
})()));

addEventListener("activate", (event) => event.waitUntil((async () => {
  for (const name of await caches.keys()) if (name.startsWith(OURS) && name !== KEPT) await caches.delete(name);
})()));

addEventListener("fetch", (event) => {
  if (event.request.method !== "GET" || !event.request.url.startsWith(registration.scope)) return;
  event.respondWith((async () => await (await caches.open(KEPT)).match(event.request, { ignoreSearch: true }) ?? fetch(event.request))());
});
