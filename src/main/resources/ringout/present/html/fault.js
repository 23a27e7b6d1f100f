/* The search for a fault, as it is shown: what to test next first, then what may be wrong. */
const unitEntries = () => search.units.map(one => ({words: squeezed(one.unit), severity: "", here: true, item: () => make("li", {}, make("button", {type: "button", onclick: () => startSearch(one.unit)}, make("span", {className: "what"}, one.unit + " is silent", make("small", {textContent: "find the fault"}))))}));

/** Where a name of the list is: the wire, the plug, or the first plug of the unit. */
function placeOf(name) {
  if (byLead.has(name)) return ["wire", byLead.get(name)[0]];
  const plug = byPlug.has(name) ? byPlug.get(name) : data.plugs.findIndex(one => one.unit === name);
  return plug >= 0 ? ["plug", plug] : undefined;
}

function goTo(name) {
  const [kind, index] = placeOf(name);
  choose({kind, [kind]: index});
  openPane("drawing");
  showPlace(kind, index);
}

function placeButtons(names) {
  const known = [...new Set(names)].filter(name => name && placeOf(name));
  return known.length ? make("p", {className: "places"}, "On the drawing: ", known.map(name => button(name, () => goTo(name)))) : null;
}

function lines(className, texts) {
  return texts.length ? make("ul", {className}, texts.map(text => make("li", {textContent: text}))) : null;
}

function fact(name, value) {
  return value ? [make("dt", {textContent: name}), make("dd", {}, value)] : [];
}

function bar(width) {
  const inner = make("span");
  inner.style.width = Math.max(1, width) + "%";
  return make("span", {className: "share", "aria-hidden": "true"}, inner);
}

function faultList(list) {
  const {unit, node, read, end} = standing();
  if (!unit) return chooseSilent(list);
  const head = make("h2", {tabIndex: -1, textContent: unit.unit + " is silent"});
  head.id = "step";
  list.append(head, make("div", {className: "go"},
    read.length ? button("Back one answer", () => write({act: "back", unit: unit.unit}, "last answer taken back")) : "",
    button("Another unit", () => write({act: "leave", unit: unit.unit}, "left")),
    read.length ? button("Start again", () => write({act: "start", unit: unit.unit}, "begun again")) : ""));
  if (now.state) list.append(care("Worked out in state " + search.state + ", not in " + state().name + "."));
  list.append(make("p", {textContent: "All others respond" + (unit.behind.length ? ", but for what is commanded through it and is not heard meanwhile: " + unit.behind.map(words).join(", ") : "")}));
  if (read.length) list.append(make("ol", {className: "read", "aria-label": "Read so far"}, read.map(one => make("li", {}, words(one.test.title) + ": ", make("b", {textContent: one.outcome}), one.typed ? " (" + one.typed + ")" : ""))));
  if (!node) list.append(make("p", {textContent: "No single fault of the model silences " + unit.unit + " alone. Look again who else is silent, then look at the list."}));
  else {
    ({test: testStep, do: repairStep, in: goInStep, turn: turnStep, none: noneStep, end: endStep})[node.kind](list, unit, node, read, end);
    if (node.retest && node.retest.length) retest(list, unit, node.retest.map(words));
    if (node.ranked) candidates(list, node);
  }
  if (unit.ways.length) list.append(make("details", {}, make("summary", {textContent: "What " + unit.unit + " hangs on"}), lines("plain", unit.ways.map(words))));
  list.append(care("Do not fly to see whether it comes back. Shares rest on judgement and on the list: nothing here is certain."));
}

function chooseSilent(list) {
  const head = make("h2", {tabIndex: -1, textContent: "Which unit is silent?"});
  const near = search.units.filter(one => now.near && now.near.has(one.unit));
  const far = search.units.filter(one => !near.includes(one));
  const buttons = units => make("div", {className: "units"}, units.map(one => button(one.unit, () => startSearch(one.unit))));
  head.id = "step";
  list.append(head, make("p", {textContent: "One unit does not respond and all others do, in state " + search.state + ". If several are silent, choose the one nearest the controller, or use the program."}));
  if (near.length) list.append(make("h3", {textContent: "On what was measured"}), buttons(near), make("h3", {textContent: "All others"}));
  list.append(buttons(far));
  if (!search.units.length) list.append(make("p", {textContent: "By the list nothing hears or commands any unit, so silence tells nothing."}));
}

function testStep(list, unit, node) {
  const test = search.tests[node.test];
  list.append(make("section", {className: "step"},
    make("h3", {textContent: (node.again ? "Read again: " : "Test next: ") + words(test.title)}),
    lines("care", test.safety.map(words)),
    make("dl", {}, fact("Takes", words(node.cost) + ", " + words(test.access)), fact("Nothing wrong", words(node.sound)), fact("Beware", words(test.trap)), fact("Prove again", test.disturbs.map(words).join(", ")), fact("To the end", words(node.toTheEnd) ? "about " + words(node.toTheEnd) : "")),
    placeButtons([words(test.place), ...test.disturbs.map(words)]),
    ...answers(unit, node, test)));
}

function answers(unit, node, test) {
  const rest = test.outcomes.map((text, i) => i).filter(i => !node.out.some(one => one.outcome === i));
  const buttons = node.out.map(one => make("button", {type: "button", className: "answer", onclick: () => answer(unit.unit, test, one.outcome, "")},
    make("b", {textContent: words(test.outcomes[one.outcome])}), make("small", {textContent: words(one.chance) + ": " + words(one.shown)}), make("small", {textContent: "then likeliest: " + words(one.leads)})));
  return [test.unit && test.bands.length ? typeField(unit, test) : null, make("h4", {textContent: test.bands.length ? "or choose what it shows" : "What does it show?"}), make("div", {className: "answers"}, buttons),
    rest.length ? make("details", {}, make("summary", {textContent: "Something else"}), make("div", {className: "units"}, rest.map(i => button(words(test.outcomes[i]), () => answer(unit.unit, test, i, ""))))) : null];
}

function typeField(unit, test) {
  const field = make("input", {type: "text", inputMode: "decimal", autocomplete: "off", size: 12, placeholder: test.unit === "ohm" ? "118, 1.2k, OL" : test.unit});
  field.id = "typed";
  const said = make("output");
  const enter = () => {
    const reading = measured(field.value, test.unit);
    const outcome = reading ? outcomeOf(test, reading) : -1;
    if (outcome >= 0) answer(unit.unit, test, outcome, field.value.trim());
    else said.textContent = field.value.trim() ? "that is no reading of this test: a number in " + test.unit + (test.over >= 0 ? ", or OL for over range" : "") : "";
  };
  field.onkeydown = event => { if (event.key === "Enter") enter(); };
  return make("p", {className: "reading"}, make("label", {}, "Reading, " + test.unit + " ", field), button("Enter", enter), said);
}

const jobLines = node => [node.less ? make("p", {textContent: node.less + " more below 2 % each are left out here."}) : null, make("ol", {className: "ranked"}, node.jobs.map(([share, width, text]) => make("li", {}, make("div", {className: "one"}, make("b", {textContent: words(share)}), bar(width), make("span", {textContent: words(text)})))))].reverse();

/** A stop of the search: what to do in words, before it the cautions. */
function stop(list, unit, title, ...parts) {
  const told = (text, cured) => button(text, () => write({act: "result", unit: unit.unit, cured}, text));
  list.append(make("section", {className: "step"}, make("h3", {textContent: title}), lines("care", search.packs.map(words)), ...parts.flat(),
    make("p", {textContent: "Then observe again. What is cured by pulling and plugging alone is not cured: it is a contact that comes and goes."}),
    make("div", {className: "go"}, told("It responds again", true), told("Still silent", false)), resultTold(unit)));
}

function resultTold(unit) {
  const result = [...keep.entries].reverse().find(one => one.$search);
  if (!result || result.$search.act !== "result" || result.$search.unit !== unit.unit) return null;
  return make("output", {textContent: result.$search.cured ? "Written into the record. Now prove again what was opened or disturbed." : "Written into the record. Read the deciding test once more, go back one answer, or take the next fault below; two faults at once are possible."});
}

function repairStep(list, unit, node) {
  const again = node.again.map(i => search.tests[i]);
  stop(list, unit, "Stop measuring, repair this", jobLines(node), make("p", {textContent: (node.covers ? "Likely enough to act on" : "No dearer than the cheapest useful test") + "; takes " + words(node.cost) + "."}),
    ...again.flatMap(test => [make("p", {textContent: "First read again, the advice hangs on it: " + words(test.title)}), placeButtons([words(test.place)])]));
}

function goInStep(list, unit, node) {
  const look = node.look.map(i => search.tests[i]);
  stop(list, unit, "Go in: " + words(node.lids), make("p", {textContent: "Further outside tests will not separate these; they share one opening (" + words(node.cost) + "). Bring what these need:"}), jobLines(node),
    look.length ? make("p", {textContent: "Once it is open, look first:"}) : null, lines("plain", look.map(test => words(test.title))), placeButtons(look.map(test => words(test.place))));
}

function turnStep(list, unit, node) {
  stop(list, unit, "Nothing separates these: do them in turn", make("p", {textContent: "No test left tells them apart. Observe after each whether it is cured."}), jobLines(node));
}

function noneStep(list, unit, node, read) {
  list.append(make("section", {className: "step"}, make("h3", {textContent: "The readings fit no fault of the model"}), make("p", {textContent: "Two faults, a wrong list, or something not thought of. Read the doubtful tests again; write down all readings before anything is changed. Nearest:"}),
    lines("plain", node.near.map(words)), goOn(unit, read)));
}

function endStep(list, unit, node, read, end) {
  list.append(make("section", {className: "step"}, make("h3", {textContent: end === "strange" ? "No fault thought of shows this" : "The page is not worked out further"}),
    make("p", {textContent: end === "strange" ? "A misreading is likeliest: go back one answer and read it once more, by another hand. If it stays, it is two faults, a wrong list, or something not thought of." : "Likeliest now: " + words(node.limb.leads) + ". This shows with: " + words(node.limb.shown) + "."}), goOn(unit, read)));
}

function goOn(unit, read) {
  return make("div", {}, make("p", {textContent: "Go on at a computer with the program:"}), make("p", {className: "typed", textContent: command(unit.unit, read)}));
}

function retest(list, unit, pairs) {
  const all = pairs.map((text, i) => i).filter(i => i % 2 === 0);
  list.append(make("h3", {textContent: "After the repair, prove again"}), ...all.map(i => provedBox(unit, pairs[i], pairs[i + 1])));
}

/** A box for what is proved again; it stands in the record as a remark, since a thing proved again need not be a lead. */
function provedBox(unit, object, what) {
  const text = "proved again after " + unit.unit + " was silent";
  const before = [...keep.entries].reverse().find(one => one.kind === "note" && one.item === object && (one.text === text || one.text === "not " + text));
  const box = make("input", {type: "checkbox", checked: before !== undefined && before.text === text});
  box.onchange = () => note({kind: "note", item: object, text: (box.checked ? "" : "not ") + text});
  return make("label", {className: "tick"}, box, make("span", {textContent: object + ": " + what}));
}

/** Faults by falling share; the line of one whose wire or plug is drawn leads there. */
function candidates(list, node) {
  const line = ([title, share, width, why, places]) => {
    const names = places.map(words).filter(placeOf);
    const parts = [make("b", {textContent: words(share)}), bar(width), make("span", {className: "what"}, words(title), words(why) ? make("small", {textContent: words(why)}) : null, names.length ? make("small", {textContent: "show " + names[0]}) : null)];
    return make("li", {}, names.length ? make("button", {type: "button", className: "one", onclick: () => goTo(names[0])}, parts) : make("div", {className: "one"}, parts));
  };
  const [share, width] = node.unknown;
  const unknown = make("li", {}, make("div", {className: "one"}, make("b", {textContent: words(share)}), bar(width), make("span", {textContent: "something not in the model"})));
  list.append(make("h3", {textContent: "What may be wrong"}), make("ol", {className: "ranked"}, node.ranked.map(line), unknown));
  if (node.others) list.append(make("p", {textContent: node.others + " more with a small share each"}));
}
