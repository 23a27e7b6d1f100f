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

function note(entry) {
  keep.entries.push({...entry, state: state().name, by: keep.who, date: new Date().toISOString()});
  store();
}

/** The last entry of a kind at a place; what was entered before stays in the record. */
function last(kind, where) {
  for (let i = keep.entries.length - 1; i >= 0; i--) if (keep.entries[i].kind === kind && keep.entries[i].where === where) return keep.entries[i];
  return undefined;
}

const ticked = where => { const one = last("tick", where); return one !== undefined && one.done; };

/** A reading as a technician types it: decimal comma or point, k for thousand, OL or open for over range. */
function typed(text) {
  const plain = text.trim().toLowerCase().replace(",", ".").replace(/\s*(ohm|ω)$/u, "");
  if (/^(ol|o\.l|open|over|inf|1\.?-+)$/.test(plain)) return {over: true};
  const match = /^(\d+(?:\.\d*)?|\.\d+)\s*(k|m)?$/.exec(plain);
  if (!match) return undefined;
  return {value: Number((Number(match[1]) * ({k: 1000, m: 1000000}[match[2]] || 1)).toPrecision(9))};
}

function verdict(reading, band) {
  const inside = reading.over ? band === null : band !== null && reading.value >= band[0] && reading.value <= band[1];
  return inside ? "inside the band" : "OUTSIDE the band";
}

function shown(entry) {
  return (entry.over ? "over range" : entry.value + " ohm") + ", " + entry.verdict;
}

function tickBox(text, where) {
  const box = make("input", {type: "checkbox", checked: ticked(where)});
  box.onchange = () => { note({kind: "tick", where, done: box.checked}); said.textContent = told(where); };
  const said = make("small", {textContent: told(where)});
  return make("label", {className: "tick"}, box, make("span", {}, text + " ", said));
}

function told(where) {
  const one = last("tick", where);
  return one ? (one.done ? "" : "taken back ") + one.date.slice(0, 10) + (one.by ? " " + one.by : "") : "";
}

function readingField(name, where, expected, band, wires) {
  const field = make("input", {type: "text", inputMode: "decimal", autocomplete: "off", size: 8, placeholder: "ohm, or OL"});
  const before = last("reading", where);
  const said = make("output", {textContent: before ? shown(before) : ""});
  const enter = () => {
    const reading = typed(field.value);
    if (!reading) {
      said.textContent = field.value.trim() ? "not a reading: a number in ohm, 1.2k, or OL for over range" : "";
      return;
    }
    const entry = {kind: "reading", where, quantity: "ohm", ...reading, expectedLow: band ? band[0] : null, expectedHigh: band ? band[1] : null, instrument: keep.instrument, verdict: verdict(reading, band)};
    note(entry);
    field.value = "";
    said.textContent = shown(entry) + (entry.verdict === "inside the band" ? "" : ": expected " + expected + ". Repeat it with zeroed leads; if it stays, stop here and find the cause before you go on.");
    judge(entry);
  };
  const find = button("Find the fault", () => findFault(wires));
  const judge = entry => { find.hidden = entry === undefined || entry.verdict === "inside the band"; said.classList.toggle("bad", !find.hidden); };
  judge(before);
  field.onkeydown = event => { if (event.key === "Enter") enter(); };
  return make("p", {className: "reading"}, make("label", {}, name + " ", field), button("Enter", enter), said, find);
}

function proveWire(index) {
  const wire = data.wires[index];
  const where = wire.from + " > " + wire.to;
  return [make("h3", {textContent: "Prove it"}), tickBox("Made at " + wire.from, wire.lead + " " + wire.from), tickBox("Made at " + wire.to, wire.lead + " " + wire.to),
    readingField("Rung out, end to end", where, state().ohms[index], state().accept[index], [index])];
}

function proveBus(plug) {
  if (!state().buses[plug]) return [];
  return [make("h3", {textContent: "Prove it"}), readingField("H to L, all mated", plug + "-H > " + plug + "-L", state().buses[plug], state().busAccept[plug], data.plugs[byPlug.get(plug)].wires.filter(i => data.wires[i].leg))];
}

function asFile() {
  return JSON.stringify({aircraft: data.aircraft, hash: data.hash, entries: keep.entries}, null, 1) + "\n";
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
    if (!Array.isArray(other.entries) || other.entries.some(one => typeof one !== "object" || one === null || typeof one.kind !== "string" || typeof one.where !== "string")) throw new Error("form");
    const known = new Set(keep.entries.map(one => JSON.stringify(one)));
    const fresh = other.entries.filter(one => !known.has(JSON.stringify(one)));
    keep.entries = [...keep.entries, ...fresh].sort((a, b) => String(a.date).localeCompare(String(b.date)));
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
  const good = wire => { const one = last("reading", wire.from + " > " + wire.to); return one !== undefined && one.verdict === "inside the band"; };
  const rung = data.wires.filter(good).length;
  const ends = data.wires.reduce((sum, wire) => sum + [wire.from, wire.to].filter(end => ticked(wire.lead + " " + end)).length, 0);
  const bad = keep.entries.filter(one => one.kind === "reading" && last("reading", one.where) === one && one.verdict !== "inside the band");
  list.append(make("p", {textContent: rung + " of " + wires + " conductors rung out, " + ends + " of " + 2 * wires + " ends made, " + bad.length + (bad.length === 1 ? " reading" : " readings") + " outside " + (bad.length === 1 ? "its" : "their") + " band"}),
    keep.kept ? "" : make("p", {className: "care", textContent: "This browser keeps nothing for a page opened from a file: save the record as a file before you close it."}),
    make("div", {className: "form"}, make("label", {}, "Who ", person), make("label", {}, "Meter ", meter), button("Save as a file", saveFile), make("label", {}, "Take up a file ", file)), say);
  if (bad.length) list.append(make("h2", {textContent: "Outside their band"}), make("ul", {}, bad.map(recordLine)));
  const open = [...byLead].map(([lead, all]) => [lead, all.filter(i => !good(data.wires[i])), all.length]).filter(([, left]) => left.length);
  list.append(make("h2", {textContent: "Still to ring out (" + open.length + " leads)"}), make("ul", {}, open.map(([lead, left, all]) => entry("wire", left[0], make("span", {className: "tag", textContent: lead.slice(0, 12)}), data.wires[left[0]].from + " to " + data.wires[left[0]].to, left.length + " of " + all + " conductors"))));
  list.append(make("h2", {textContent: "Entries (" + keep.entries.length + ")"}), make("ul", {}, [...keep.entries].reverse().slice(0, 400).map(recordLine)));
  if (!keep.entries.length) list.append(make("p", {textContent: "none yet: choose a wire, tick its ends as they are made and enter what the meter shows"}));
}

function recordLine(entry) {
  const what = entry.kind === "reading" ? shown(entry) : entry.kind === "tick" ? (entry.done ? "made" : "tick taken back") : String(entry.text || entry.kind);
  return make("li", {}, make("p", {}, entry.where + ": " + what, make("small", {textContent: " " + String(entry.date).slice(0, 16).replace("T", " ") + (entry.by ? ", " + entry.by : "") + (entry.instrument ? ", " + entry.instrument : "")})));
}

openRecord();
