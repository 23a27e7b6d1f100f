/* The lists beside the drawing: findings, leads, plugs, cautions, and the search over all of them. */
const squeezed = text => text.toLowerCase().replace(/[\s,]+/g, "");
const rounded = volts => (/^\d/.test(volts || "") ? " " + Number.parseFloat(volts).toFixed(0) + "V" : "");

function entry(kind, index, tag, title, small) {
  const key = kind + "=" + index;
  const line = make("button", {type: "button", onclick: () => { choose({kind, [kind]: index}); showPlace(kind, index); }}, tag, make("span", {className: "what"}, title, small ? make("small", {textContent: small}) : null));
  line.dataset.key = key;
  return make("li", {}, line);
}

/** Brings the first sheet a thing is on to view, when the sheet shown has it not. */
function showPlace(kind, index) {
  const tests = {
    wire: [line => wiresOf(line).includes(index), "g.wire", "g.wire.lit"],
    plug: [group => group.dataset.plug === data.plugs[index].name, "g.plug", "g.plug.here"],
    finding: [badge => badge.dataset.number === String(index + 1) && badge.dataset.target, "g.badge", "g.badge.here[data-target]"]
  };
  const [test, selector, lit] = tests[kind];
  const on = sheetsWith(test, selector);
  if (on.length && !on.includes(now.sheet)) showSheet(on[0]);
  if (on.length) focusOn(lit);
}

function tag(severity) {
  return make("span", {className: "tag " + severity, textContent: severity});
}

const found = words => words === "" || words === undefined;
const findingEntries = () => data.findings.map((finding, i) => ({words: squeezed([finding.code, finding.title, ...finding.objects, ...finding.leads].join(" ")), severity: finding.severity, here: finding.states.includes(state().name), item: () => entry("finding", i, tag(finding.severity), (finding.waived ? "waived: " : "") + finding.title, finding.code + (finding.objects.length ? ", " + finding.objects.join(", ") : ""))}));
const openEntries = () => data.open.map(open => ({words: squeezed([open.code, open.title, ...open.objects].join(" ")), severity: "Q", here: open.states.includes(state().name), item: () => make("li", {}, make("p", {}, tag("Q"), " ", open.title, make("small", {textContent: " " + open.code + "; " + open.fix})))}));
const leadEntries = () => data.wires.map((wire, i) => {
  const net = state().nets[state().netOf[i]];
  return {words: squeezed([wire.lead, wire.from, wire.to, wire.carries, wire.note, ...wire.facts, net.volts || "", rounded(net.volts)].join(" ")), severity: "", here: true, item: () => entry("wire", i, make("span", {className: "tag", textContent: wire.lead.slice(0, 12)}), wire.from + " to " + wire.to, [wire.carries, ...wire.facts, net.volts ? net.volts : ""].filter(Boolean).join(", "))};
});
const plugEntries = () => data.plugs.map((plug, i) => ({words: squeezed([plug.name, plug.unit, ...plug.wires.map(w => data.wires[w].lead)].join(" ")), severity: "", here: true, item: () => entry("plug", i, null, plug.name, [...new Set(plug.wires.map(w => data.wires[w].lead))].join(", "))}));

function fits(one) {
  return one.here && !now.hidden.has(one.severity) && (found(now.words) || one.words.includes(now.words));
}

function group(title, entries, parent) {
  const fitting = entries.filter(fits);
  if (title && (fitting.length || found(now.words))) parent.append(make("h2", {textContent: title + " (" + fitting.length + ")"}));
  if (fitting.length) parent.append(make("ul", {}, fitting.slice(0, 400).map(one => one.item())));
  if (fitting.length > 400) parent.append(make("p", {textContent: (fitting.length - 400) + " more: search for them"}));
  return fitting.length;
}

function fillList() {
  const list = byId("list");
  list.replaceChildren();
  byId("severities").hidden = now.tab !== "findings";
  if (!found(now.words)) {
    const total = group("Findings", [...findingEntries(), ...openEntries()], list) + group("Leads", leadEntries(), list) + group("Plugs", plugEntries(), list) + group("Silent unit", unitEntries(), list);
    if (!total) list.append(make("p", {textContent: "nothing of that name, or it is hidden by the severities shown"}));
  } else if (now.tab === "findings") {
    if (!group("", findingEntries(), list)) list.append(make("p", {textContent: data.findings.length ? "no finding of the severities shown in this state" : "no finding. What is not checked may still be wrong: look at what cannot be told below."}));
    if (data.open.length) group("Cannot tell", openEntries(), list);
  } else if (now.tab === "leads") group("", leadEntries(), list);
  else if (now.tab === "plugs") group("", plugEntries(), list);
  else if (now.tab === "fault") faultList(list);
  else if (now.tab === "record") recordList(list);
  else cautions(list);
  markCurrent();
}

function cautions(list) {
  const part = (title, lines) => list.append(make("h2", {textContent: title}), make("ul", {}, lines.map(line => make("li", {}, make("p", {textContent: line})))));
  part("Before ohms", data.ohmsCautions);
  part("Before volts", data.voltsCautions);
  part("What this page is not", ["It shows what follows from the list. Where the list is wrong, so is the page: prove every connection with the meter.", "Local codes, the makers' data and a licensed person's judgement come first.", "Heat, vibration, workmanship, crimp quality and software are not checked."]);
}

function markCurrent() {
  const key = now.chosen ? now.chosen.kind + "=" + now.chosen[now.chosen.kind] : "";
  document.querySelectorAll("#list button").forEach(line => line.dataset.key === key ? line.setAttribute("aria-current", "true") : line.removeAttribute("aria-current"));
}
