package figure

// chartRules draw charts in the colours of the figures. The event's leg is solid and filled, the other dashed and open: in grey, and
// for who sees no colour, they stay two.
const chartRules = `
.chart text{fill:var(--text);font:13px system-ui,sans-serif;font-variant-numeric:tabular-nums lining-nums}
.c-y{text-anchor:end}.c-x{text-anchor:middle}
.chart .c-end{font-weight:600;paint-order:stroke;stroke:var(--bg);stroke-width:3}
.chart path{fill:none}.c-grid{stroke:var(--far);stroke-width:1}.c-axis,.c-stem,.c-break{stroke:var(--kit);stroke-width:1.2}
.c-own{stroke:var(--work)}.c-other{stroke:var(--outline)}
.c-line{stroke-width:2.2}.chart .c-line.c-other{stroke-dasharray:5 4.5;stroke-width:1.8}
.c-band{stroke-width:1.6;opacity:.75}.c-bar{stroke-width:2}
.c-dots.c-own{fill:var(--work);stroke:var(--bg);stroke-width:1}.c-dots.c-other{fill:var(--bg);stroke-width:2}
.chart .c-mark{stroke:var(--edge);stroke-width:1.4;stroke-dasharray:1 4}.c-lead{stroke:var(--kit);stroke-width:.7}
.chart .c-weeks{fill:var(--range);fill-opacity:var(--veil,1);stroke:var(--edge);stroke-width:.8}
.chart .c-block{fill:var(--work)}.chart .c-limit{fill:var(--bg);stroke:var(--text);stroke-width:2}
.chart .c-start{fill:var(--move);stroke:var(--bg);stroke-width:1}.chart .c-visit{fill:var(--text);stroke:var(--bg);stroke-width:1}
`
