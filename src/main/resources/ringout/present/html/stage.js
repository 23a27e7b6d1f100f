/* The sheet shown: choosing, moving, zooming, lighting. */
const stage = byId("stage");
let view = null;
let svg = null;

function showSheet(index) {
  now.sheet = index;
  svg = document.importNode(sheets[index].part.querySelector("svg"), true);
  svg.removeAttribute("role");
  svg.setAttribute("aria-hidden", "true");
  const box = svg.getAttribute("viewBox").split(" ").map(Number);
  view = {x: box[0], y: box[1], w: box[2], h: box[3], whole: box};
  svg.querySelectorAll("g.wire polyline, g.wire path").forEach(line => {
    const touch = line.cloneNode(false);
    touch.classList.add("touch");
    line.parentNode.append(touch);
  });
  stage.replaceChildren(svg);
  byId("sheet").value = String(index);
  byId("drawn").textContent = "Drawn: state " + data.states[0].name + (now.state ? ". In state " + state().name + " what is faint is taken off or not mated." : ".");
  light();
}

function setView(x, y, w) {
  const h = w * view.whole[3] / view.whole[2];
  const least = view.whole[2] / 40;
  if (w < least) return;
  Object.assign(view, {x, y, w: Math.min(w, view.whole[2] * 1.5), h});
  svg.setAttribute("viewBox", [view.x, view.y, view.w, view.w * view.whole[3] / view.whole[2]].map(n => n.toFixed(3)).join(" "));
}

function zoom(factor, fx = 0.5, fy = 0.5) {
  setView(view.x + view.w * fx * (1 - factor), view.y + view.h * fy * (1 - factor), view.w * factor);
}

function wholeSheet() { setView(view.whole[0], view.whole[1], view.whole[2]); }

function bringToView(element) {
  const box = element.getBBox();
  const w = Math.min(view.whole[2], Math.max(120, box.width * 1.6));
  setView(box.x + box.width / 2 - w / 2, box.y + box.height / 2 - w * view.whole[3] / view.whole[2] / 2, w);
}

/** Marks on the sheet what is chosen: a net end to end, what a pulled plug takes, the places of a finding. */
function light() {
  if (!svg) return;
  const chosen = now.chosen;
  const net = chosen && chosen.kind === "wire" ? state().netOf[chosen.wire] : -1;
  const pull = chosen && chosen.kind === "plug" ? state().pulls[chosen.plug] : null;
  const lost = new Set(pull ? [...pull.dark, ...pull.cut, ...pull.motors] : []);
  const places = new Set(chosen && chosen.kind === "finding" ? data.findings[chosen.finding].leads : []);
  const gone = new Set(state().absent);
  let any = false;
  svg.querySelectorAll("g.wire").forEach(line => {
    const wires = wiresOf(line);
    const lit = wires.some(i => net >= 0 && state().netOf[i] === net) || (pull && wires.some(i => data.plugs[chosen.plug].wires.includes(i))) || wires.some(i => places.has(data.wires[i].lead));
    line.classList.toggle("lit", Boolean(lit));
    any = any || lit;
  });
  svg.querySelectorAll("g.label").forEach(label => label.classList.toggle("lit", Boolean(label.dataset.wire && svg.querySelector('g.wire.lit[data-wire="' + CSS.escape(label.dataset.wire) + '"]'))));
  svg.querySelectorAll("g.unit").forEach(unit => {
    unit.classList.toggle("dark", lost.has(unit.dataset.unit));
    unit.classList.toggle("gone", gone.has(unit.dataset.unit));
  });
  svg.querySelectorAll("g.plug").forEach(plug => plug.classList.toggle("here", Boolean(pull) && plug.dataset.plug === data.plugs[chosen.plug].name));
  svg.querySelectorAll("g.badge").forEach(badge => badge.classList.toggle("here", Boolean(chosen) && chosen.kind === "finding" && Number(badge.dataset.number) === chosen.finding + 1));
  svg.classList.toggle("chosen", Boolean(any));
}

/** The sheets a thing is on. */
function sheetsWith(test, selector) {
  return sheets.map((sheet, i) => i).filter(i => [...sheets[i].part.querySelectorAll(selector)].some(test));
}

const pointers = new Map();
let moved = 0;
let spread = 0;
stage.addEventListener("pointerdown", event => {
  pointers.set(event.pointerId, event);
  if (pointers.size === 1) moved = 0;
  spread = 0;
});
stage.addEventListener("pointermove", event => {
  const before = pointers.get(event.pointerId);
  if (!before) return;
  const scale = view.w / Math.min(stage.clientWidth, stage.clientHeight * view.whole[2] / view.whole[3]);
  if (pointers.size === 1) {
    moved += Math.abs(event.clientX - before.clientX) + Math.abs(event.clientY - before.clientY);
    if (moved > 6) {
      if (!stage.hasPointerCapture(event.pointerId)) stage.setPointerCapture(event.pointerId);
      setView(view.x - (event.clientX - before.clientX) * scale, view.y - (event.clientY - before.clientY) * scale, view.w);
    }
  }
  pointers.set(event.pointerId, event);
  if (pointers.size === 2) {
    moved = 99;
    const [a, b] = [...pointers.values()];
    const apart = Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY);
    if (spread) zoom(spread / apart);
    spread = apart;
  }
});
["pointerup", "pointercancel", "pointerleave"].forEach(name => stage.addEventListener(name, event => {
  pointers.delete(event.pointerId);
  spread = 0;
}));
stage.addEventListener("click", event => { if (moved <= 6) pick(event.target); });
stage.addEventListener("wheel", event => {
  event.preventDefault();
  const box = stage.getBoundingClientRect();
  zoom(event.deltaY > 0 ? 1.2 : 1 / 1.2, (event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height);
}, {passive: false});
stage.addEventListener("keydown", event => {
  const step = view.w / 8;
  const keys = {ArrowLeft: () => setView(view.x - step, view.y, view.w), ArrowRight: () => setView(view.x + step, view.y, view.w), ArrowUp: () => setView(view.x, view.y - step, view.w), ArrowDown: () => setView(view.x, view.y + step, view.w), "+": () => zoom(1 / 1.3), "=": () => zoom(1 / 1.3), "-": () => zoom(1.3), 0: wholeSheet};
  if (keys[event.key]) { event.preventDefault(); keys[event.key](); }
});

function pick(target) {
  const badge = target.closest("g.badge, g.finding");
  const number = badge && Number(badge.dataset.number);
  if (number && number <= data.findings.length) return choose({kind: "finding", finding: number - 1});
  const line = target.closest("g.wire");
  if (line) return choose({kind: "wire", wire: wiresOf(line)[0]});
  const label = target.closest("g.label[data-wire]");
  const labelled = label && svg.querySelector('g.wire[data-wire="' + CSS.escape(label.dataset.wire) + '"]');
  if (labelled) return choose({kind: "wire", wire: wiresOf(labelled)[0]});
  const pin = target.closest("g.pin, g.plug");
  const plug = pin && (pin.dataset.plug ? byPlug.get(pin.dataset.plug) : plugOfPin(pin.dataset.pin));
  if (plug !== undefined && plug !== null) return choose({kind: "plug", plug});
  return choose(null);
}
