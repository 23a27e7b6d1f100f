/* What is chosen, in words. */
function pair(list, name, value) {
  if (value && (!Array.isArray(value) || value.length)) list.append(make("dt", {textContent: name}), make("dd", {}, value));
}

function button(text, action) {
  return make("button", {type: "button", textContent: text, onclick: action});
}

function sheetButtons(indexes, after) {
  return indexes.map(i => button("Sheet: " + sheets[i].title, () => { showSheet(i); openPane("drawing"); after(); }));
}

function wireDetail(chosen) {
  const wire = data.wires[chosen.wire];
  const net = state().nets[state().netOf[chosen.wire]];
  const facts = make("dl");
  pair(facts, "From", wire.from);
  pair(facts, "To", wire.to);
  pair(facts, "Carries", [wire.carries, ...wire.facts].filter(Boolean).join(", "));
  pair(facts, "Way", net.way);
  pair(facts, "Also on it", net.pins.filter(pin => pin !== wire.from && pin !== wire.to).join(", "));
  pair(facts, "Expected here, power off", state().ohms[chosen.wire] + " from end to end");
  const ends = [wire.from, wire.to].map(plugOfPin).filter(i => i !== undefined).map(i => data.plugs[i].name);
  if (wire.leg) pair(facts, "Between H and L", ends.filter(name => state().buses[name]).map(name => state().buses[name] + " at " + name).join("; "));
  if (net.volts) pair(facts, "Expected, power on", net.volts + " against " + net.against + ", loads at rest");
  else if (state().noVolts) pair(facts, "Volts", "cannot tell: " + state().noVolts);
  pair(facts, "Remark", wire.note);
  const own = i => state().netOf[i] === state().netOf[chosen.wire];
  const on = sheetsWith(line => wiresOf(line).some(own), "g.wire");
  const plugs = [...new Set([wire.from, wire.to].map(plugOfPin))].filter(i => i !== undefined);
  const siblings = byLead.get(wire.lead).filter(i => i !== chosen.wire);
  return [make("h2", {textContent: wire.lead + ": " + wire.from + " to " + wire.to}), facts,
    make("div", {className: "go"}, sheetButtons(on, () => focusOn("g.wire.lit")), plugs.map(i => button("Plug " + data.plugs[i].name, () => choose({kind: "plug", plug: i}))), siblings.map(i => button(wire.lead + " " + (data.wires[i].carries || data.wires[i].from), () => choose({kind: "wire", wire: i})))),
    ...proveWire(chosen.wire),
    care("Ohms only with the power off and the packs out; a live rail gives nonsense and can destroy the meter.")];
}

function care(text) {
  return make("p", {className: "care", textContent: text});
}

function plugDetail(chosen) {
  const plug = data.plugs[chosen.plug];
  const pull = state().pulls[chosen.plug];
  const facts = make("dl");
  pair(facts, "Leads", [...new Set(plug.wires.map(i => data.wires[i].lead))].join(", "));
  if (!pull.mated) pair(facts, "Pulled", "not mated in state " + state().name);
  else {
    const lost = [...pull.dark, ...pull.cut, ...pull.motors, ...pull.functions].length;
    pair(facts, "Pulled, no supply", pull.dark.join(", "));
    pair(facts, "Cut off from the controller's bus", pull.cut.join(", "));
    pair(facts, "Motors that stop", pull.motors.join(", "));
    pair(facts, "Functions that stop", pull.functions.join("; "));
    if (!lost) pair(facts, "Pulled", "no supply, bus member, motor or listed function is lost");
    pair(facts, "Its wires carry", [...new Set(plug.wires.map(i => data.wires[i].carries).filter(Boolean))].join(", ") + ": what comes by them stops");
    pair(facts, "H to L", state().buses[plug.name] ? state().buses[plug.name] + " here, mated" : "");
  }
  const parts = [make("h2", {textContent: "Plug " + plug.name}), facts];
  if (pull.changes.length) {
    const rows = pull.changes.map(([at, before, after]) => make("tr", {}, make("th", {textContent: at, scope: "row"}), make("td", {textContent: before}), make("td", {textContent: after})));
    parts.push(make("table", {}, make("caption", {textContent: "Readings between H and L that change, power off"}), make("thead", {}, make("tr", {}, ["At", "Mated", plug.name + " pulled"].map(text => make("th", {textContent: text, scope: "col"})))), make("tbody", {}, rows)));
  }
  const on = sheetsWith(group => group.dataset.plug === plug.name, "g.plug");
  parts.push(make("div", {className: "go"}, sheetButtons(on, () => focusOn("g.plug.here")), plug.wires.map(i => button("Wire " + data.wires[i].lead + " " + (data.wires[i].carries || data.wires[i].from), () => choose({kind: "wire", wire: i})))));
  parts.push(...proveBus(plug.name));
  parts.push(care("Never pull a power plug live. Mate, lock and prove it again afterwards."));
  return parts;
}

function findingDetail(chosen) {
  const finding = data.findings[chosen.finding];
  const facts = make("dl");
  pair(facts, "Rows", finding.rows.map(row => make("div", {textContent: row})));
  pair(facts, "Path", finding.path);
  pair(facts, "Sum", finding.sum);
  pair(facts, "Why", finding.why);
  pair(facts, "Measure", finding.meter);
  pair(facts, "Fix", finding.fix);
  pair(facts, "Also explains", finding.also.map(line => make("div", {textContent: line})));
  pair(facts, "States", finding.states.join(", "));
  const number = String(chosen.finding + 1);
  const on = sheetsWith(badge => badge.dataset.number === number && badge.dataset.target, "g.badge");
  const leads = finding.leads.filter(lead => byLead.has(lead));
  return [make("h2", {}, make("span", {className: "tag " + finding.severity, textContent: finding.severity}), " " + finding.code + " " + finding.title), facts,
    make("div", {className: "go"}, sheetButtons(on, () => focusOn("g.badge.here[data-target]")), leads.map(lead => button("Wire " + lead, () => choose({kind: "wire", wire: byLead.get(lead)[0]}))))];
}

function focusOn(selector) {
  const element = svg.querySelector(selector);
  if (element) bringToView(element);
}

/** Chooses a thing; the address of the page says which, so that the way back is the browser's own. */
function choose(chosen, fromAddress) {
  now.chosen = chosen;
  const detail = byId("detail");
  if (!chosen) {
    detail.hidden = true;
    detail.replaceChildren();
  } else {
    const parts = {wire: wireDetail, plug: plugDetail, finding: findingDetail}[chosen.kind](chosen);
    const close = make("button", {type: "button", className: "close", textContent: "Close", onclick: () => { choose(null); byId("list").focus(); }});
    detail.replaceChildren(make("div", {className: "head"}, parts[0], close), ...parts.slice(1));
    detail.hidden = false;
    detail.scrollTop = 0;
  }
  if (!fromAddress) history.pushState(null, "", chosen ? "#" + chosen.kind + "=" + chosen[chosen.kind] : "#");
  light();
  markCurrent();
}

function readAddress() {
  const [kind, text] = location.hash.slice(1).split("=");
  const number = Number(text);
  const most = {wire: data.wires, plug: data.plugs, finding: data.findings}[kind];
  const known = most && Number.isInteger(number) && number >= 0 && number < most.length;
  choose(known ? {kind, [kind]: number} : null, true);
  if (known) showPlace(kind, number);
}
