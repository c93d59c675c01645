// Finding: the form shows itself, hides the cards that do not fit, and says how many are left. Without a script all stand there.
{
const form = document.querySelector(".finder")
if (form) {
  const cards = [...document.querySelectorAll(".cards > li")]
  const count = form.querySelector(".count")
  const plain = text => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase()
  const texts = cards.map(card => plain(card.textContent))
  const show = () => {
    const asked = plain(form.querySelector("input").value).split(/\s+/).filter(Boolean)
    const tokens = [...form.querySelectorAll("select")].map(select => select.value.slice(1)).filter(Boolean)
    let left = 0
    cards.forEach((card, i) => {
      const fits = asked.every(word => texts[i].includes(word)) && tokens.every(token => token == "all" || card.classList.contains(token))
      card.classList.toggle("gone", !fits)
      left += fits
    })
    for (const part of document.querySelectorAll(".part")) {
      const own = part.querySelectorAll(".cards > li")
      if (own.length) part.classList.toggle("gone", [...own].every(card => card.classList.contains("gone")))
    }
    count.textContent = (left == 1 ? count.dataset.single : count.dataset.many).replace("{n}", left)
  }
  form.hidden = false
  form.addEventListener("input", show)
  form.addEventListener("submit", event => event.preventDefault())
  form.addEventListener("reset", () => setTimeout(show))
  show()
}
}
// Keeping: where the library is served, a telephone may keep it, and nothing but it.
if (location.protocol.startsWith("http") && "serviceWorker" in navigator && isSecureContext) {
  navigator.serviceWorker.register(document.body.dataset.root + "sw.js").catch(() => {})
}
