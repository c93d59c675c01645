// What the client ticks stays on this device, under the client's code and the digest of this very page. Where there is no
// storage, as in a mail's preview, there is no diary: then the grid for paper stands.
const ours = "paceleaf " + data.client + " ", key = ours + data.digest, past = []
let store, kept = {}, last
try {
  const found = localStorage
  if (!found[key]) found[ours] = "" // can anything be kept here? What is kept already is read even where nothing more fits
  store = found
  kept = JSON.parse(found[key] || "{}")
} catch { }
last = JSON.stringify(kept)
const noted = day => kept[day] ||= {}
const save = () => {
  last = JSON.stringify(kept)
  try { store[key] = last } catch { tell(says.full) }
}
const keep = () => {
  past.push(last)
  save()
}
// All pages of this client, not this one alone. What was deleted comes back by no undoing.
const forget = () => {
  kept = {}
  past.length = 0
  last = "{}"
  Object.keys(store).forEach(k => k.startsWith(ours) && store.removeItem(k))
}
const ticked = on => {
  const { done, left, off } = kept[on] || {}
  return off?.on || Object.values({ ...done, ...left }).some(e => e.on)
}
