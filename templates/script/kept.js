// What the client ticks stays on this device, under the client's code and the digest of this very page. Where there is no
// storage, as in a mail's preview, there is no diary: then the grid for paper stands.
const ours = "paceleaf " + data.client + " ", key = ours + data.digest
let store, kept = {}
try {
  localStorage[ours] = ""
  store = localStorage
  kept = JSON.parse(store[key] || "{}")
} catch { }
const noted = day => kept[day] ||= {}
const keep = () => {
  try { store[key] = JSON.stringify(kept) } catch { tell(says.full) }
}
// All pages of this client, not this one alone.
const forget = () => {
  kept = {}
  Object.keys(store).forEach(k => k.startsWith(ours) && store.removeItem(k))
}
const ticked = day => Object.values({ ...kept[day]?.done, ...kept[day]?.left }).some(e => e.on)
