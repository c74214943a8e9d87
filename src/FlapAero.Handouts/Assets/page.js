"use strict";
(() => {
  // Figures: the drawing in the page stays for print and for readers without scripts.
  const draw = (figure) => {
    const still = figure.querySelector(".plot-drawing");
    const source = figure.querySelector("script.plot-data");
    if (!still || !source || typeof Plotly === "undefined") return;
    const plot = JSON.parse(source.textContent);
    const live = document.createElement("div");
    live.className = "plot-live";
    live.setAttribute("role", "img");
    live.setAttribute("aria-label", still.getAttribute("aria-label") || "");
    figure.insertBefore(live, still);
    figure.classList.add("is-drawn");
    const layout = fit(plot.layout || {}, live.clientWidth || document.body.clientWidth);
    const config = Object.assign({}, plot.config, { responsive: true, displayModeBar: false });
    Promise.resolve(Plotly.newPlot(live, plot.data, layout, config)).then(() => {
      // Larger text or an opened fold narrows a figure without the window changing.
      new ResizeObserver(() => { if (live.offsetWidth > 0) Plotly.Plots.resize(live); }).observe(live);
    }).catch(() => {
      live.remove();
      figure.classList.remove("is-drawn");
    });
  };

  // A projector needs larger letters than a phone; what makes room for them grows alike.
  const fit = (given, width) => {
    const layout = Object.assign({}, given, { autosize: true });
    delete layout.width;
    delete layout.height;
    const size = (given.font && given.font.size) || 14;
    const grown = Math.max(size, width >= 800 ? 18 : 14) / size;
    const grow = (part, names) => {
      const copy = Object.assign({}, part);
      for (const name of names) if (typeof copy[name] === "number") copy[name] *= grown;
      return copy;
    };
    layout.font = grow(Object.assign({ size }, given.font), ["size"]);
    if (given.margin) layout.margin = grow(given.margin, ["l", "r", "t", "b"]);
    if (given.annotations)
      layout.annotations = given.annotations.map((a) =>
        Object.assign(grow(a, ["xshift", "yshift", "ax", "ay"]), a.font ? { font: grow(a.font, ["size"]) } : {}));
    return layout;
  };

  // A region that does not scroll needs no stop of the Tab key.
  const tabStops = () => {
    for (const region of document.querySelectorAll(".scroll")) {
      if (region.scrollWidth > region.clientWidth + 1) region.setAttribute("tabindex", "0");
      else region.removeAttribute("tabindex");
    }
  };

  // On paper nothing can be opened, so what is printed is opened for the printer and closed after.
  const opened = [];
  const openForPrint = () => {
    for (const details of document.querySelectorAll("details.after, details.answer, details.hint, body.instructor details")) {
      if (details.open) continue;
      details.open = true;
      opened.push(details);
    }
  };
  // A link into a fold opens it, in browsers that do not by themselves.
  const openForLink = () => {
    const target = location.hash.length > 1 && document.getElementById(decodeURIComponent(location.hash.slice(1)));
    for (let fold = target && target.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
  };
  const closeAfterPrint = () => {
    for (const details of opened.splice(0)) details.open = false;
  };

  for (const figure of document.querySelectorAll("figure.plot")) draw(figure);
  tabStops();
  openForLink();
  addEventListener("hashchange", openForLink);
  addEventListener("resize", tabStops);
  document.addEventListener("toggle", tabStops, true);
  addEventListener("beforeprint", openForPrint);
  addEventListener("afterprint", closeAfterPrint);
})();
