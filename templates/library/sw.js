// Keeps the library on a telephone. What is kept, and under which name, stands above this line. It answers for these files
// alone: a page made for one person is not among them and is never kept, not even where somebody laid it beside them.
const own = "paceleaf-library "
const place = url => Object.assign(new URL(url, self.registration.scope), { search: "", hash: "" }).href
const listed = new Set(["", ...first, ...later].map(place))

self.addEventListener("install", event => event.waitUntil((async () => {
  const cache = await caches.open(own + keep)
  await cache.addAll(first)
  for (const file of later) await cache.add(file).catch(() => {})
  self.skipWaiting()
})()))

self.addEventListener("activate", event => event.waitUntil((async () => {
  for (const name of await caches.keys()) if (name.startsWith(own) && name != own + keep) await caches.delete(name)
  await self.clients.claim()
})()))

self.addEventListener("fetch", event => {
  const asked = event.request
  if (asked.method != "GET" || !listed.has(place(asked.url))) return
  event.respondWith((async () => {
    const cache = await caches.open(own + keep)
    try {
      const answer = await fetch(asked)
      if (answer.ok) cache.put(asked, answer.clone())
      return answer
    } catch (gone) {
      return await cache.match(asked, { ignoreSearch: true }) || await cache.match("index.html") || Response.error()
    }
  })())
})
