// Draws figures from the data that stand beside them: in pages, where all figures are there at once, and in notebooks,
// where they come later. All values were computed before; here they are only shown. A figure is drawn when it is about to
// be seen, each in a task of its own, and plotly.js comes with the first: until then its still drawing shows the same.
function drawFigures(bringPlotly) {
  "use strict";

  const known = new WeakSet();
  let plotly;
  let turn = Promise.resolve();

  const findAll = () => {
    for (const figure of document.querySelectorAll("figure.plot")) if (!known.has(figure)) prepare(figure);
  };

  // The browser answers the reader between two works.
  const inTurn = (work) => {
    const done = turn.then(() => new Promise((go) => setTimeout(go))).then(work);
    turn = done.catch(() => {});
    return done;
  };

  const whenNear = (figure, come) => new IntersectionObserver((entries, watch) => {
    if (!entries.some((entry) => entry.isIntersecting)) return;
    watch.disconnect();
    come();
  }, { rootMargin: "100% 0px" }).observe(figure);

  // A picture is moved in place: each value says what it changes in which element of the drawing. A notebook has the drawing
  // as an image; its text becomes the drawing. On paper the picture starts again.
  const preparePicture = (figure, still, plot) => {
    const drawing = () => {
      const image = still.querySelector("img");
      if (image) {
        const text = decodeURIComponent(image.src.slice(image.src.indexOf(",") + 1));
        image.replaceWith(document.importNode(new DOMParser().parseFromString(text, "image/svg+xml").documentElement, true));
      }
      return still.querySelector("svg");
    };
    const move = (frame) => {
      const elements = drawing().children;
      for (const part of frame.parts) {
        const element = elements[part.at];
        for (const name in part) {
          if (name === "inner") element.innerHTML = part.inner;
          else if (name !== "at") element.setAttribute(name, part[name]);
        }
      }
    };
    const began = still.getAttribute("aria-label");
    let shown;
    let said;
    const tell = (frame, finding) => {
      still.setAttribute("aria-label", finding);
      move(frame);
    };
    figure.classList.add("is-moving");
    control(figure, plot, (frame, finding) => tell(shown = frame, said = finding));
    matchMedia("print").addEventListener("change", (paper) => {
      if (!shown) return;
      if (paper.matches) tell(plot().moving.frames[plot().moving.start], began);
      else tell(shown, said);
    });
  };

  // The still drawing stays for print and for readers without scripts.
  const prepare = (figure) => {
    const still = figure.querySelector(".plot-drawing");
    const source = figure.querySelector("script.plot-data");
    if (!still || !source) return;
    known.add(figure);
    let read;
    const plot = () => read ??= JSON.parse(source.textContent);
    if (figure.classList.contains("picture")) return preparePicture(figure, still, plot);
    figure.classList.add("is-coming");
    const live = document.createElement("div");
    live.className = "plot-live";
    live.setAttribute("role", "img");
    live.setAttribute("aria-label", still.getAttribute("aria-label") || "");
    let shown = {};
    const predicted = new Map();
    let letters = 0;
    let growth = 1;
    let size = "";
    // Inside a closed fold a figure has no width.
    const measure = () => {
      growth = letters ? letters / sizeOf(plot().layout) : growthAt(plot().layout, live.clientWidth || document.body.clientWidth);
      giveRoom();
    };
    // What is to scale takes no more height than its width leaves it.
    const giveRoom = () => {
      const width = figure.clientWidth, { margin, xaxis, yaxis } = plot().layout;
      if (!figure.classList.contains("to-scale") || width === 0) return;
      const up = (yaxis.range[1] - yaxis.range[0]) / (xaxis.range[1] - xaxis.range[0]);
      figure.style.setProperty("--room", Math.ceil(up * (width - growth * (margin.l + margin.r)) + growth * (margin.t + margin.b)) + "px");
    };
    if (figure.classList.contains("to-scale")) measure();
    const sizeNow = () => live.offsetWidth + " by " + live.offsetHeight;
    const draw = () => {
      size = sizeNow();
      const config = Object.assign({}, plot().config, { responsive: false, displayModeBar: false });
      return plotly.react(live, over(plot().data, shown.data).map((trace) => traceOf(trace, growth)), layoutOf(plot(), shown, growth, predicted), config);
    };
    const resize = () => {
      if (live.offsetWidth === 0 || size === sizeNow()) return;
      const before = growth;
      measure();
      if (growth !== before) return draw();
      size = sizeNow();
      plotly.Plots.resize(live);
    };
    // The reader's own mark: a page tells what is typed, and null where nothing is.
    figure.addEventListener("prediction", (event) => {
      predicted.set(event.detail.name, event.detail.value);
      if (live.isConnected && (plot().predictions || []).some((one) => one.name === event.detail.name)) draw();
    });
    // A page that is projected says how large letters shall be, in pixels; none gives the choice back.
    figure.addEventListener("letters", (event) => {
      letters = event.detail;
      if (!live.isConnected) return;
      measure();
      draw();
    });
    const box = control(figure, plot, (frame, finding) => {
      shown = frame;
      live.setAttribute("aria-label", finding);
      if (live.isConnected) draw();
    });
    const come = async () => {
      plotly ??= await bringPlotly();
      figure.insertBefore(live, still);
      figure.classList.add("is-drawn");
      measure();
      await draw();
      // Larger text or an opened fold narrows a figure without the window changing.
      new ResizeObserver(resize).observe(live);
    };
    const stayStill = () => {
      live.remove();
      figure.classList.remove("is-coming", "is-drawn");
      if (box) box.hidden = true;
    };
    whenNear(figure, () => inTurn(come).catch(stayStill));
  };

  // A frame holds only what differs from the frame that the figure starts with, element by element.
  const over = (list, changes) => changes ? changes.map((change, i) => Object.assign({}, list[i], change)) : list;

  // A desk has room for larger letters than a phone; on a narrow phone they shrink as the figure does.
  const growthAt = (layout, width) => {
    const size = sizeOf(layout);
    return (width >= 800 ? Math.max(size, 18) : size * Math.min(1, width / 340)) / size;
  };

  const sizeOf = (layout) => (layout.font && layout.font.size) || 14;

  const grow = (part, growth, names) => {
    const copy = Object.assign({}, part);
    for (const name of names) if (typeof copy[name] === "number") copy[name] *= growth;
    return copy;
  };

  // Lines are as thick as letters are large, their dashes as long.
  const lineOf = (line, growth) => line && Object.assign(grow(line, growth, ["width"]),
    /px/.test(line.dash || "") && { dash: line.dash.replace(/[\d.]+/g, (length) => length * growth) });

  const traceOf = (trace, growth) => Object.assign({}, trace, trace.line && { line: lineOf(trace.line, growth) }, trace.marker
    && { marker: Object.assign(grow(trace.marker, growth, ["size"]), trace.marker.line && { line: lineOf(trace.marker.line, growth) }) });

  // A line at what was predicted; beyond the axis its name stands at the edge with an arrow to the way it lies.
  const ownMark = (one, value, layout, growth) => {
    const axis = one.axis, other = axis === "x" ? "y" : "x";
    const [low, high] = layout[axis + "axis"].range;
    const at = one.from + one.times * value;
    const place = Math.max(low, Math.min(high, at));
    const isEnd = place > (low + high) / 2;
    const beyond = axis === "x" ? ["← ", " →"] : ["↓ ", " ↑"];
    const text = at < low ? beyond[0] + one.label : at > high ? one.label + beyond[1] : one.label;
    const shape = { type: "line", line: { color: "#000", width: 2 * growth, dash: "dot" }, [axis + "ref"]: axis, [other + "ref"]: "paper", [axis + "0"]: place, [axis + "1"]: place, [other + "0"]: 0, [other + "1"]: 1 };
    const note = axis === "x"
      ? { x: place, xref: "x", xanchor: isEnd ? "right" : "left", xshift: isEnd ? -6 : 6, y: 1, yref: "paper", yanchor: "top" }
      : { y: place, yref: "y", yanchor: isEnd ? "top" : "bottom", x: 0, xref: "paper", xanchor: "left", xshift: 6 };
    return [shape, Object.assign(note, { text: `<b>${text}<\/b>`, showarrow: false, bgcolor: "rgba(255,255,255,.8)", font: { color: "#000" } })];
  };

  const layoutOf = (plot, frame, growth, predicted) => {
    const given = plot.layout;
    const layout = Object.assign({}, given, { autosize: true });
    delete layout.height;
    layout.font = grow(given.font || { size: 14 }, growth, ["size"]);
    if (given.margin) layout.margin = grow(given.margin, growth, ["l", "r", "t", "b"]);
    for (const axis of ["xaxis", "yaxis"]) layout[axis] = grow(Object.assign({ gridwidth: 1 }, given[axis]), growth, ["ticklen", "tickwidth", "linewidth", "gridwidth"]);
    layout.shapes = (over(given.shapes, frame.shapes) || []).map((shape) => Object.assign({}, shape, { line: lineOf(shape.line, growth) }));
    layout.annotations = (over(given.annotations, frame.annotations) || []).map((note) => Object.assign(
      grow(note, growth, ["xshift", "yshift", "ax", "ay", "arrowwidth"]), note.font && { font: grow(note.font, growth, ["size"]) }));
    for (const one of plot.predictions || []) {
      const value = predicted.has(one.name) ? predicted.get(one.name) : one.value || null;
      if (value === null) continue;
      const [shape, note] = ownMark(one, value, layout, growth);
      layout.shapes = [...(layout.shapes || []), shape];
      layout.annotations = [...layout.annotations, note];
    }
    return layout;
  };

  // The control works before its figure is drawn: it says each value's finding, and the drawing follows.
  const control = (figure, plot, show) => {
    const box = figure.querySelector(".plot-control");
    if (!box) return null;
    const input = box.querySelector("input");
    const value = box.querySelector("output");
    const finding = box.querySelector(".plot-finding");
    input.value = input.defaultValue;
    input.addEventListener("input", () => {
      const frame = plot().moving.frames[Number(input.value)];
      input.setAttribute("aria-valuetext", frame.value);
      value.textContent = frame.value;
      finding.innerHTML = frame.finding;
      show(frame, finding.textContent);
    });
    // A notebook takes arrow keys for moving from cell to cell.
    input.addEventListener("keydown", (event) => event.stopPropagation());
    box.hidden = false;
    return box;
  };

  // In a notebook each figure pushes its name on this queue; a figure that has just been put out is not yet in its place.
  const queue = window.flapaeroFigures;
  if (queue && !Array.isArray(queue)) {
    queue.push("again");
    return;
  }
  window.flapaeroFigures = { push: () => setTimeout(findAll) };
  findAll();
}
