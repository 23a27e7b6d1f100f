/* The search for a fault: where it stands follows from the entries of the record alone, so that a file taken along holds it. */
const search = data.search;
const words = number => search.texts[number];

/** Replays the entries: the silent unit and what was answered since. */
function dialogue() {
  let unit = null;
  let answers = [];
  keep.entries.forEach(one => {
    const step = one.$search;
    if (typeof step !== "object" || step === null) return;
    if (step.act === "start") { unit = search.units.find(other => other.unit === step.unit) || null; answers = []; }
    if (step.act === "leave") { unit = null; answers = []; }
    if (step.act === "answer") answers.push({id: step.test || "", outcome: step.outcome, typed: step.typed || ""});
    if (step.act === "back") answers.pop();
  });
  return {unit, answers};
}

/** The place in the tree of the answers: its node, what was read on the way, and why the tree ends where it does. */
function standing() {
  const {unit, answers} = dialogue();
  const read = [];
  let node = unit && unit.tree;
  let end = "";
  for (const answer of answers) {
    if (!node || node.kind !== "test") break;
    const test = search.tests[node.test];
    // Answers taken up from another revision of the list may be of a test that is not asked for here: it is asked anew.
    if (answer.id && answer.id !== test.id) break;
    const limb = node.out.find(one => words(test.outcomes[one.outcome]) === answer.outcome);
    read.push({test, ...answer});
    end = limb ? (limb.then ? "" : "deep") : "strange";
    node = limb ? limb.then || {kind: "end", limb} : {kind: "end"};
  }
  return {unit, node, read, end};
}

/** A reading in the unit of the test, as a technician types it. */
function measured(text, unit) {
  if (unit === "ohm") return typed(text);
  const plain = text.trim().replace(",", ".").replace("\u2212", "-");
  if (/^(ol|o\.l|open|over)$/i.test(plain)) return {over: true};
  const match = /^([+-]?(?:\d+\.?\d*|\.\d+))\s*(k|m)?\s*[va]?$/i.exec(plain);
  return match ? {value: Number((Number(match[1]) * ({k: 1000, m: 0.001}[(match[2] || "").toLowerCase()] || 1)).toPrecision(9))} : undefined;
}

/** The outcome a reading means, by the bands the program wrote; -1 when it means none. */
function outcomeOf(test, reading) {
  if (reading.over) return test.over;
  return test.bands.reduce((found, [from, outcome]) => (reading.value >= from ? outcome : found), -1);
}

function write(step, text) {
  note({kind: "note", item: step.unit, text: "search, silent: " + text, $search: step});
  if (now.tab !== "fault") openTab("fault");
  else fillList();
  const head = byId("step");
  if (head) head.focus({preventScroll: true});
  byId("lists").scrollTop = 0;
}

/** After a reading outside its band: the units on the nets of some wires come first. */
function findFault(wires) {
  const nets = new Set(wires.map(i => state().netOf[i]));
  const plugs = data.plugs.filter(plug => plug.wires.some(i => nets.has(state().netOf[i])));
  now.near = new Set(plugs.map(plug => plug.unit));
  openPane("lists");
  if (dialogue().unit) write({act: "leave", unit: dialogue().unit.unit}, "left");
  openTab("fault");
  byId("step").focus();
}

function startSearch(unit) {
  openPane("lists");
  write({act: "start", unit}, "begun, all others respond");
}

function answer(unit, test, outcome, text) {
  const said = words(test.outcomes[outcome]);
  write({act: "answer", unit, test: test.id, outcome: said, typed: text}, test.id + " = " + said + (text ? " (" + text + ")" : ""));
}

/** What one types at a computer to go on where the page ends. */
function command(unit, read) {
  return ["ringout fault AIRCRAFT --silent " + unit + " --alive others", ...read.map(one => '--reading "' + one.test.id + "=" + one.outcome + '"')].join(" ");
}
