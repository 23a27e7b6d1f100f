"use strict";
/* What the program computed. Everything below only looks it up. */
const data = JSON.parse(document.getElementById("data").textContent);
const byId = id => document.getElementById(id);
const sheets = [...document.querySelectorAll("template.sheet")].map(part => ({name: part.dataset.sheet, part: part.content, title: (part.content.querySelector("svg > title") || {textContent: part.dataset.sheet}).textContent}));
const byPins = new Map(data.wires.map((wire, i) => [wire.from + " > " + wire.to, i]));
const byLead = new Map();
data.wires.forEach((wire, i) => byLead.set(wire.lead, [...(byLead.get(wire.lead) || []), i]));
const byPlug = new Map(data.plugs.map((plug, i) => [plug.name, i]));
const now = {state: 0, sheet: 0, tab: "findings", chosen: null, words: "", hidden: new Set()};
const state = () => data.states[now.state];

/** What the conductors carry that a line of a tree stands for. */
const trees = {supply: ["supply in", "supply out", "supply through", "pack plus", "pack minus"], return: ["0V", "pack minus"]};

/** Conductors that a line on a sheet stands for: one by its pins, the legs of a bus pair, or all of a lead. */
function wiresOf(line) {
  const exact = byPins.get(line.dataset.from + " > " + line.dataset.to);
  if (exact !== undefined) return [exact];
  const id = line.dataset.wire;
  if (byLead.has(id)) return trees[line.dataset.kind] ? byLead.get(id).filter(i => trees[line.dataset.kind].includes(data.wires[i].carries)) : byLead.get(id);
  const dot = id.lastIndexOf(".");
  const all = byLead.get(id.slice(0, dot)) || [];
  const leg = all.filter(i => data.wires[i].leg === id.slice(dot + 1));
  return leg.length ? leg : all;
}

/** The plug a pin is in: its name up to the last separator that leaves the name of a plug. */
function plugOfPin(pin) {
  for (let end = pin.length; end > 0; end--) if (byPlug.has(pin.slice(0, end))) return byPlug.get(pin.slice(0, end));
  return undefined;
}

/** An element with text and children; text is never read as markup. */
function make(name, options, ...children) {
  const element = document.createElement(name);
  Object.entries(options || {}).forEach(([key, value]) => key in element && key !== "list" ? element[key] = value : element.setAttribute(key, value));
  children.flat().filter(child => child !== null && child !== undefined && child !== "").forEach(child => element.append(child));
  return element;
}
