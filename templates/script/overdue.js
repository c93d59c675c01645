// A page whose last day is over says so, and hides nothing.
const overdue = () => {
  if (today > data.ends) find("main")[0].prepend(text("p", says.overdue, { className: "now overdue" }))
}
