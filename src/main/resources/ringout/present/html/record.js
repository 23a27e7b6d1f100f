/* What was made, rung out and read. Kept in this browser at once, taken along as a file. */
const keep = {key: "ringout record " + data.aircraft + " " + data.hash, entries: [], who: "", instrument: "", kept: true, saved: true};

/** Reads what this browser kept; a browser that keeps nothing for a file says so instead of losing it silently. */
function openRecord() {
  try {
    const text = localStorage.getItem(keep.key);
    if (text) Object.assign(keep, JSON.parse(text));
    localStorage.setItem(keep.key + " probe", "1");
    localStorage.removeItem(keep.key + " probe");
  } catch (error) {
    keep.kept = false;
  }
}

function store() {
  keep.saved = false;
  try {
    localStorage.setItem(keep.key, JSON.stringify({entries: keep.entries, who: keep.who, instrument: keep.instrument}));
  } catch (error) {
    keep.kept = false;
  }
}

window.addEventListener("beforeunload", event => { if (!keep.kept && !keep.saved) event.preventDefault(); });

/** Puts an entry in the record, as it will stand in the file. */
function note(entry) {
  keep.entries.push({...entry, by: keep.who || null, date: new Date().toISOString().slice(0, 10)});
  store();
}

const same = (one, kind, item, end) => one.kind === kind && one.item === item && (one.end || "") === (end || "");

/** The last entry of a kind about a thing; readings that were entered before it stay in the record. */
function last(kind, item, end) {
  return keep.entries.filter(one => same(one, kind, item, end)).pop();
}

/** Sets or takes back the tick of one end of a lead; what is taken back is remarked. */
function tick(lead, end, done) {
  if (done) {
    note({kind: "tick", item: lead, end, what: "made"});
  } else {
    keep.entries = keep.entries.filter(one => !same(one, "tick", lead, end));
    note({kind: "note", item: lead, text: "tick at the " + end + " end taken back"});
  }
}

const bands = new Map();

/** The band a reading must lie in, as computed for the state it was taken in; null for over range. */
function bandOf(reading) {
  const one = data.states.findIndex(at => at.name === reading.state);
  if (one < 0) return undefined;
  if (!bands.has(one)) {
    const all = new Map();
    data.wires.forEach((wire, i) => all.set(wire.from + " " + wire.to, data.states[one].accept[i]));
    Object.entries(data.states[one].busAccept).forEach(([plug, band]) => all.set(plug + "-H " + plug + "-L", band));
    bands.set(one, all);
  }
  return bands.get(one).get(reading.item);
}

/** A reading as a technician types it: decimal comma or point, k for thousand, OL or open for over range. */
function typed(text) {
  const plain = text.trim().toLowerCase().replace(",", ".").replace(/\s*(ohm|ω)$/u, "");
  if (/^(ol|o\.l|open|over|inf|1\.?-+)$/.test(plain)) return {over: true};
  const match = /^(\d+(?:\.\d*)?|\.\d+)\s*(k|m)?$/.exec(plain);
  if (!match) return undefined;
  return {value: Number((Number(match[1]) * ({k: 1000, m: 1000000}[match[2]] || 1)).toPrecision(9))};
}

/** Whether a reading lies in its band; undefined when the page has no band for it. */
function inside(reading) {
  const band = bandOf(reading);
  if (band === undefined) return undefined;
  if (typeof reading.value !== "number") return band === null;
  return band !== null && reading.value >= band[0] && reading.value <= band[1];
}

function shown(reading) {
  const good = inside(reading);
  return (typeof reading.value === "number" ? reading.value + " ohm" : "over range") + (good === undefined ? "" : good ? ", inside the band" : ", OUTSIDE the band");
}

function tickBox(lead, end, at) {
  const box = make("input", {type: "checkbox", checked: last("tick", lead, end) !== undefined});
  const said = make("small", {textContent: signed(last("tick", lead, end))});
  box.onchange = () => { tick(lead, end, box.checked); said.textContent = signed(last("tick", lead, end)); };
  return make("label", {className: "tick"}, box, make("span", {}, lead + " made at " + at + " ", said));
}

function signed(entry) {
  return entry ? [entry.date, entry.by].filter(Boolean).join(" ") : "";
}

function readingField(name, item, expected, wires) {
  const field = make("input", {type: "text", inputMode: "decimal", autocomplete: "off", size: 8, placeholder: "ohm, or OL"});
  const before = last("reading", item);
  const said = make("output", {textContent: before ? shown(before) : ""});
  const enter = () => {
    const reading = typed(field.value);
    if (!reading) {
      said.textContent = field.value.trim() ? "not a reading: a number in ohm, 1.2k, or OL for over range" : "";
      return;
    }
    const entry = {kind: "reading", item, quantity: "ohm", state: state().name, value: reading.over ? "n/a" : reading.value, instrument: keep.instrument || null};
    if (reading.over) entry.text = "over range";
    note(entry);
    field.value = "";
    said.textContent = shown(entry) + (inside(entry) ? "" : ": expected " + expected + ". Repeat it with zeroed leads; if it stays, stop here and find the cause before you go on.");
    judge(entry);
  };
  const find = button("Find the fault", () => findFault(wires));
  const judge = entry => { find.hidden = entry === undefined || inside(entry) !== false; said.classList.toggle("bad", !find.hidden); };
  judge(before);
  field.onkeydown = event => { if (event.key === "Enter") enter(); };
  return make("p", {className: "reading"}, make("label", {}, name + " ", field), button("Enter", enter), said, find);
}

function proveWire(index) {
  const wire = data.wires[index];
  return [make("h3", {textContent: "Prove it"}), tickBox(wire.lead, "from", wire.from), tickBox(wire.lead, "to", wire.to),
    readingField("Rung out, end to end", wire.from + " " + wire.to, state().ohms[index], [index])];
}

function proveBus(plug) {
  if (!state().buses[plug]) return [];
  return [make("h3", {textContent: "Prove it"}), readingField("H to L, all mated", plug + "-H " + plug + "-L", state().buses[plug], data.plugs[byPlug.get(plug)].wires.filter(i => data.wires[i].leg))];
}

function asFile() {
  return JSON.stringify({aircraft: data.aircraft, hash: data.hash, tail: data.tail || null, entries: keep.entries}, null, 1) + "\n";
}

function saveFile() {
  const link = make("a", {href: URL.createObjectURL(new Blob([asFile()], {type: "application/json"})), download: "record-" + data.hash + ".json"});
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
  keep.saved = true;
}

/** Takes up the entries of a file that are not in the record yet. */
async function takeUp(file, say) {
  try {
    const other = JSON.parse(await file.text());
    if (!Array.isArray(other.entries) || other.entries.some(one => typeof one !== "object" || one === null || typeof one.kind !== "string" || typeof one.item !== "string")) throw new Error("form");
    const known = new Set(keep.entries.map(one => JSON.stringify(one)));
    const fresh = other.entries.filter(one => !known.has(JSON.stringify(one)));
    keep.entries = [...keep.entries, ...fresh];
    store();
    fillList();
    say(fresh.length + " entries taken up" + (other.hash === data.hash ? "" : "; they were made on another revision of the list (" + String(other.hash) + "): look whether they still hold"));
  } catch (error) {
    say("that file is not a record of this page; nothing was taken up");
  }
}

function recordList(list) {
  const person = make("input", {type: "text", value: keep.who, autocomplete: "off", oninput: event => { keep.who = event.target.value; store(); }});
  const meter = make("input", {type: "text", value: keep.instrument, autocomplete: "off", oninput: event => { keep.instrument = event.target.value; store(); }});
  const say = make("output");
  const file = make("input", {type: "file", accept: ".json,application/json", onchange: event => { if (event.target.files[0]) takeUp(event.target.files[0], words => { byId("said").textContent = words; }); }});
  say.id = "said";
  const wires = data.wires.length;
  const good = wire => { const one = last("reading", wire.from + " " + wire.to); return one !== undefined && inside(one) === true; };
  const rung = data.wires.filter(good).length;
  const ends = [...byLead.keys()].reduce((sum, lead) => sum + ["from", "to"].filter(end => last("tick", lead, end)).length, 0);
  const bad = keep.entries.filter(one => one.kind === "reading" && last("reading", one.item) === one && inside(one) === false);
  list.append(make("p", {textContent: rung + " of " + wires + " conductors rung out, " + ends + " of " + 2 * byLead.size + " ends made, " + bad.length + (bad.length === 1 ? " reading" : " readings") + " outside " + (bad.length === 1 ? "its" : "their") + " band"}),
    keep.kept ? "" : make("p", {className: "care", textContent: "This browser keeps nothing for a page opened from a file: save the record as a file before you close it."}),
    make("div", {className: "form"}, make("label", {}, "Who ", person), make("label", {}, "Meter ", meter), button("Save as a file", saveFile), make("label", {}, "Take up a file ", file)), say);
  if (bad.length) list.append(make("h2", {textContent: "Outside their band"}), make("ul", {}, bad.map(recordLine)));
  const open = [...byLead].map(([lead, all]) => [lead, all.filter(i => !good(data.wires[i])), all.length]).filter(([, left]) => left.length);
  list.append(make("h2", {textContent: "Still to ring out (" + open.length + " leads)"}), make("ul", {}, open.map(([lead, left, all]) => entry("wire", left[0], make("span", {className: "tag", textContent: lead.slice(0, 12)}), data.wires[left[0]].from + " to " + data.wires[left[0]].to, left.length + " of " + all + " conductors"))));
  list.append(make("h2", {textContent: "Entries (" + keep.entries.length + ")"}), make("ul", {}, [...keep.entries].reverse().slice(0, 400).map(recordLine)));
  if (!keep.entries.length) list.append(make("p", {textContent: "none yet: choose a wire, tick its ends as they are made and enter what the meter shows"}));
}

function recordLine(entry) {
  const what = entry.kind === "reading" ? shown(entry) : entry.kind === "tick" ? entry.what + " at the " + entry.end + " end" : String(entry.text || entry.role || entry.file || "");
  return make("li", {}, make("p", {}, entry.item + ": " + what, make("small", {textContent: " " + [signed(entry), entry.instrument, entry.state].filter(Boolean).join(", ")})));
}

openRecord();
