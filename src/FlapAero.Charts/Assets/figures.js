// Draws figures from the data that stand beside them: in pages, where all figures are there at once, and in notebooks,
// where they come later. All values were computed before; here they are only shown.
function drawFigures(plotly) {
  "use strict";

  const drawAll = () => {
    for (const figure of document.querySelectorAll("figure.plot:not(.is-drawn)")) draw(figure);
  };

  // The still drawing stays for print and for readers without scripts.
  const draw = (figure) => {
    const still = figure.querySelector(".plot-drawing");
    const source = figure.querySelector("script.plot-data");
    if (!still || !source) return;
    const plot = JSON.parse(source.textContent);
    const live = document.createElement("div");
    live.className = "plot-live";
    live.setAttribute("role", "img");
    live.setAttribute("aria-label", still.getAttribute("aria-label") || "");
    figure.insertBefore(live, still);
    figure.classList.add("is-drawn");
    // Inside a closed fold a figure has no width yet.
    const growth = growthAt(plot.layout, live.clientWidth || document.body.clientWidth);
    const config = Object.assign({}, plot.config, { responsive: true, displayModeBar: false });
    const show = (frame) => plotly.react(live, over(plot.data, frame.data), layoutOf(plot, frame, growth), config);
    Promise.resolve().then(() => show({})).then(() => {
      if (plot.moving) control(figure, live, plot.moving, show);
      // Larger text or an opened fold narrows a figure without the window changing.
      new ResizeObserver(() => { if (live.offsetWidth > 0) plotly.Plots.resize(live); }).observe(live);
    }).catch(() => {
      live.remove();
      figure.classList.remove("is-drawn");
    });
  };

  // A frame holds only what differs from the frame that the figure starts with, element by element.
  const over = (list, changes) => changes ? changes.map((change, i) => Object.assign({}, list[i], change)) : list;

  // A projector needs larger letters than a phone; what makes room for them grows alike.
  const growthAt = (layout, width) => {
    const size = (layout.font && layout.font.size) || 14;
    return Math.max(size, width >= 800 ? 18 : 14) / size;
  };

  const grow = (part, growth, names) => {
    const copy = Object.assign({}, part);
    for (const name of names) if (typeof copy[name] === "number") copy[name] *= growth;
    return copy;
  };

  const layoutOf = (plot, frame, growth) => {
    const given = plot.layout;
    const layout = Object.assign({}, given, { autosize: true });
    delete layout.height;
    layout.font = grow(given.font || { size: 14 }, growth, ["size"]);
    if (given.margin) layout.margin = grow(given.margin, growth, ["l", "r", "t", "b"]);
    layout.shapes = over(given.shapes, frame.shapes);
    layout.annotations = (over(given.annotations, frame.annotations) || []).map((note) => Object.assign(
      grow(note, growth, ["xshift", "yshift", "ax", "ay"]), note.font && { font: grow(note.font, growth, ["size"]) }));
    return layout;
  };

  const control = (figure, live, moving, show) => {
    const box = figure.querySelector(".plot-control");
    if (!box) return;
    const input = box.querySelector("input");
    const value = box.querySelector("output");
    const finding = box.querySelector(".plot-finding");
    input.value = moving.start;
    input.addEventListener("input", () => {
      const frame = moving.frames[Number(input.value)];
      input.setAttribute("aria-valuetext", frame.value);
      value.textContent = frame.value;
      finding.innerHTML = frame.finding;
      live.setAttribute("aria-label", finding.textContent);
      show(frame);
    });
    // A notebook takes arrow keys for moving from cell to cell.
    input.addEventListener("keydown", (event) => event.stopPropagation());
    box.hidden = false;
  };

  drawAll();
  // In a notebook each figure pushes its name on this queue; a figure that has just been put out is not yet in its place.
  window.flapaeroFigures = { push: () => setTimeout(drawAll) };
}
