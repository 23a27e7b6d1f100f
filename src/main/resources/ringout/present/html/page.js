/* Puts the page together. */
function openPane(name) {
  document.querySelectorAll(".pane").forEach(pane => pane.classList.toggle("open", pane.id === name));
  document.querySelectorAll("nav.panes button").forEach(tab => tab.setAttribute("aria-pressed", String(tab.dataset.pane === name)));
}

function openTab(name) {
  now.tab = name;
  now.words = "";
  byId("search").value = "";
  document.querySelectorAll("#tabs [role=tab]").forEach(tab => {
    tab.setAttribute("aria-selected", String(tab.dataset.tab === name));
    tab.tabIndex = tab.dataset.tab === name ? 0 : -1;
  });
  byId("list").setAttribute("aria-labelledby", "tab-" + name);
  fillList();
}

function start() {
  data.states.forEach((one, i) => byId("state").append(make("option", {value: String(i), textContent: one.name})));
  sheets.forEach((sheet, i) => byId("sheet").append(make("option", {value: String(i), textContent: (i + 1) + " of " + sheets.length + ", " + sheet.title})));
  ["S1", "S2", "S3", "S4", "S5", "Q"].forEach(severity => {
    const box = make("input", {type: "checkbox", checked: true, value: severity, onchange: () => { box.checked ? now.hidden.delete(severity) : now.hidden.add(severity); fillList(); }});
    byId("severities").append(make("label", {}, box, severity));
  });
  byId("count").textContent = data.findings.filter(one => !one.waived).length + " findings, " + data.open.length + " cannot be told, " + data.passed + " checks passed";
  byId("state").onchange = event => { now.state = Number(event.target.value); if (svg) showSheet(now.sheet); fillList(); choose(now.chosen, true); };
  byId("light").onchange = event => { document.documentElement.dataset.light = event.target.value; };
  byId("print").onclick = () => print();
  byId("sheet").onchange = event => showSheet(Number(event.target.value));
  byId("in").onclick = () => zoom(1 / 1.4);
  byId("out").onclick = () => zoom(1.4);
  byId("whole").onclick = wholeSheet;
  byId("search").oninput = event => { now.words = squeezed(event.target.value); fillList(); };
  const tabs = [...document.querySelectorAll("#tabs [role=tab]")];
  tabs.forEach((tab, i) => {
    tab.onclick = () => openTab(tab.dataset.tab);
    tab.onkeydown = event => {
      const step = {ArrowRight: 1, ArrowLeft: -1}[event.key];
      if (step) { const next = tabs[(i + step + tabs.length) % tabs.length]; openTab(next.dataset.tab); next.focus(); }
    };
  });
  document.querySelectorAll("nav.panes button").forEach(tab => { tab.onclick = () => openPane(tab.dataset.pane); });
  document.addEventListener("keydown", event => {
    if (event.key === "/" && event.target.tagName !== "INPUT") { event.preventDefault(); byId("search").focus(); }
    if (event.key === "Escape" && now.chosen) choose(null);
  });
  window.addEventListener("popstate", readAddress);
  openPane("lists");
  openTab("findings");
  if (sheets.length) {
    showSheet(0);
    readAddress();
  } else stage.textContent = "No drawing could be made.";
}

start();
