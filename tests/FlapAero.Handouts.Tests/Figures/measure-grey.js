// What a person sees of figures without their colours: which line is which, and which line a label speaks of.
window.flapaeroGrey = (() => {
  "use strict";

  // Two lines of one dash and width must differ in luminance as text and its ground would, at this ratio at least.
  const CLEAR_STEP = 2;
  // A label is nearer to its own line by this share of its letters' size.
  const NEARER = 0.15;
  // Where a thin line leaves for a label, no other line is nearer than this share of the letters' size.
  const APART = 0.25;

  // A label that can stand nowhere clear begins with its line's dash, and needs no more.
  const KEY = /^(——|––|–·–|····|— ?—)/;
  const bare = (text) => text.replace(/<[^>]*>|[\s_{}*]/g, "").replace(KEY, "");
  const hasKey = (text) => KEY.test(text.replace(/<[^>]*>|\s/g, ""));

  const luminance = (color) => {
    const parts = color.startsWith("#") ? [1, 3, 5].map((at) => parseInt(color.slice(at, at + 2), 16)) : color.match(/[\d.]+/g).map(Number);
    const [r, g, b] = parts.map((part) => part / 255).map((c) => c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const isStep = (a, b) => (Math.max(luminance(a), luminance(b)) + 0.05) / (Math.min(luminance(a), luminance(b)) + 0.05) >= CLEAR_STEP;
  const isLike = (a, b) => a.kind === b.kind && a.dash === b.dash && Math.max(a.width, b.width) < 1.5 * Math.min(a.width, b.width) && !isStep(a.color, b.color);

  // From a box to a line from a to b: none where it enters the box.
  const toSegment = (box, a, b) => {
    let enter = 0, leave = 1;
    const dx = b[0] - a[0], dy = b[1] - a[1];
    for (const [p, q] of [[-dx, a[0] - box.left], [dx, box.right - a[0]], [-dy, a[1] - box.top], [dy, box.bottom - a[1]]]) {
      if (p === 0 && q < 0) leave = -1;
      if (p < 0) enter = Math.max(enter, q / p);
      if (p > 0) leave = Math.min(leave, q / p);
    }
    if (enter <= leave) return 0;
    const fromPoint = ([x, y]) => Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom));
    const fromCorner = (x, y) => {
      const along = dx || dy ? Math.max(0, Math.min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy))) : 0;
      return Math.hypot(x - a[0] - along * dx, y - a[1] - along * dy);
    };
    return Math.min(fromPoint(a), fromPoint(b), fromCorner(box.left, box.top), fromCorner(box.right, box.top), fromCorner(box.left, box.bottom), fromCorner(box.right, box.bottom));
  };
  const distance = (box, thing) => Math.min(...thing.points.slice(1).map((point, i) => toSegment(box, thing.points[i], point)));
  const at = ([x, y]) => ({ left: x, right: x, top: y, bottom: y });

  // A line that lies on another all along, with no gap of half its width, is seen as one with it, and both names are its.
  const isUpon = (a, b) => [[a, b], [b, a]].some(([one, other]) => one.points.every((point) => distance(at(point), other) < 1.5 * (one.width || 1)));

  const faultsOf = ({ things, labels, letters }, where) => {
    const faults = [];
    const drawn = things.filter((thing) => thing.kind !== "mark");
    drawn.forEach((a, i) => {
      for (const b of drawn.slice(i + 1)) if (isLike(a, b)) faults.push(`${where}: "${a.name}" looks like "${b.name}"`);
    });
    for (const label of labels) {
      const from = label.leader ? at(label.leader) : label.box;
      // Points of two lines may have one name.
      const [own] = things.filter((thing) => thing.name === label.name).sort((a, b) => distance(from, a) - distance(from, b));
      if (!own) {
        faults.push(`${where}: "${label.name}" is the name of nothing that is drawn`);
        continue;
      }
      // A thin line that ends on a line ends on no bar: these are areas.
      const others = things.filter((thing) => thing.name !== own.name && (thing.kind === "mark") === (own.kind === "mark") && !isUpon(thing, own)
        && !(label.leader && own.kind === "line" && thing.kind === "bars"));
      const near = distance(from, own);
      if (near > (label.leader ? 0.2 : 1.5) * letters) faults.push(`${where}: "${label.name}" is ${Math.round(near)} px from what it names`);
      for (const other of label.hasKey ? [] : others) {
        const far = distance(from, other);
        if (far < near + (label.leader ? APART : NEARER) * letters)
          faults.push(`${where}: "${label.name}" ${label.leader ? "is led" : "stands"} to "${other.name}" within ${far.toFixed(1)} px, to its own within ${near.toFixed(1)}`);
      }
    }
    return faults;
  };

  // The boxes of letters are taller than the letters.
  const boxOf = (element) => {
    const texts = [...element.querySelectorAll("text")].flatMap((text) => text.querySelector("tspan.line") ? [...text.querySelectorAll("tspan.line")] : [text]);
    const boxes = texts.map((text) => text.getBoundingClientRect()).filter((r) => r.width > 0);
    return {
      left: Math.min(...boxes.map((r) => r.left)), right: Math.max(...boxes.map((r) => r.right)),
      top: Math.min(...boxes.map((r) => r.top + 0.2 * r.height)), bottom: Math.max(...boxes.map((r) => r.bottom - 0.18 * r.height)),
    };
  };
  const barsOf = (tops, foot, half) => tops.flatMap(([x, y]) => [[x - half, foot], [x - half, y], [x + half, y], [x + half, foot]]);

  const ofLive = (live) => {
    const layout = live._fullLayout, frame = live.getBoundingClientRect();
    const x = (value) => frame.left + layout.xaxis._offset + layout.xaxis.d2p(value), y = (value) => frame.top + layout.yaxis._offset + layout.yaxis.d2p(value);
    const pointsOf = (trace) => [...trace.x].map((value, i) => [x(value), y(trace.y[i])]);
    const things = [];
    for (const trace of live._fullData) {
      if (trace.name === "marks") pointsOf(trace).forEach((point, i) => things.push({ kind: "mark", name: bare(trace.text[i]), points: [point, point] }));
      else if (trace.type === "bar") things.push({ kind: "bars", name: bare(trace.name), color: trace.marker.color, dash: "", width: 1, points: barsOf(pointsOf(trace), y(0), (x(trace.width) - x(0)) / 2) });
      else things.push({ kind: "line", name: bare(trace.name), color: trace.line.color, dash: trace.line.dash, width: trace.line.width, points: pointsOf(trace) });
    }
    const named = new Set(things.map((thing) => thing.name));
    const notes = layout.annotations.map((note, i) => ({ note, name: bare(note.text), element: live.querySelector(`.annotation[data-index="${i}"]`) }))
      .filter(({ note }) => note.xref === "x" && note.yref === "y" && !note.text.startsWith("<b>"));
    const levels = notes.filter(({ name }) => !named.has(name));
    for (const shape of layout.shapes.filter((one) => one.line.color !== "#000")) {
      const own = levels.find(({ note }) => Math.abs(note.y - shape.y0) < 1e-4 * Math.abs(layout.yaxis.range[1] - layout.yaxis.range[0]));
      things.push({ kind: "line", name: own ? own.name : "a level without a name", color: shape.line.color, dash: shape.line.dash, width: shape.line.width,
        points: [[x(layout.xaxis.range[0]), y(shape.y0)], [x(layout.xaxis.range[1]), y(shape.y0)]] });
    }
    return { things, letters: layout.font.size, labels: notes.map(({ note, name, element }) =>
      ({ name, hasKey: hasKey(note.text), box: boxOf(element.querySelector(".annotation-text-g")), leader: note.showarrow ? [x(note.x), y(note.y)] : null })) };
  };

  const ofStill = (svg, data) => {
    const matrix = svg.getScreenCTM();
    const place = ([px, py]) => [matrix.a * px + matrix.e, matrix.d * py + matrix.f];
    const numbers = (text) => text.match(/-?[\d.]+/g).map(Number);
    const pairs = (list) => list.flatMap((value, i) => i % 2 ? [] : [place([value, list[i + 1]])]);
    const style = (path, kind, name) => ({ kind, name, color: path.getAttribute("stroke"), dash: path.getAttribute("stroke-dasharray") || "", width: Number(path.getAttribute("stroke-width") || 1) });
    const lines = [...svg.querySelectorAll("polyline")], bars = [...svg.querySelectorAll("path.bars")], marks = [...svg.querySelectorAll("circle")];
    const things = data.filter((trace) => trace.name !== "marks").map((trace) => {
      if (trace.type === "bar") {
        const path = bars.shift(), corners = [...path.getAttribute("d").matchAll(/M([-\d.]+) ([-\d.]+)V([-\d.]+)H([-\d.]+)/g)].map((bar) => bar.slice(1).map(Number));
        return Object.assign(style(path, "bars", bare(trace.name)), { points: corners.flatMap(([left, foot, top, right]) => [[left, foot], [left, top], [right, top], [right, foot]].map(place)) });
      }
      const line = lines.shift();
      return Object.assign(style(line, "line", bare(trace.name)), { points: pairs(numbers(line.getAttribute("points"))) });
    });
    const named = data.find((trace) => trace.name === "marks");
    if (named) marks.forEach((mark, i) => {
      const point = place([Number(mark.getAttribute("cx")), Number(mark.getAttribute("cy"))]);
      things.push({ kind: "mark", name: bare(named.text[i]), points: [point, point] });
    });
    const labels = [...svg.querySelectorAll("g[paint-order]:not([font-weight])")].map((element) => {
      const before = element.previousElementSibling, start = before.matches("path") && before.getAttribute("stroke") === element.getAttribute("fill") && /^M([-\d.]+) ([-\d.]+)L/.exec(before.getAttribute("d"));
      return { name: bare(element.textContent), hasKey: hasKey(element.textContent), box: boxOf(element), leader: start ? place([Number(start[1]), Number(start[2])]) : null };
    });
    const known = new Set(things.map((thing) => thing.name));
    const levels = labels.filter((label) => !known.has(label.name));
    [...svg.querySelectorAll(":scope > path[stroke='#444444'][stroke-dasharray]")].forEach((path, i) => {
      const [left, height, right] = numbers(path.getAttribute("d"));
      things.push(Object.assign(style(path, "line", levels[i] ? levels[i].name : "a level without a name"), { points: [place([left, height]), place([right, height])] }));
    });
    return { things, labels, letters: Number(svg.getAttribute("font-size")) * matrix.d };
  };

  // Of a picture, what is drawn in the inks of flap settings and of changes: apart in dash or grey, or each in a part of the picture of its own.
  const ofPicture = (svg, where) => {
    const inks = new Map();
    for (const path of svg.querySelectorAll("path[data-part]")) {
      const color = path.getAttribute("stroke");
      if (!color || path.getAttribute("fill") || /^#(222222|6E6E6E|B00000)$/.test(color)) continue;
      const r = path.getBoundingClientRect();
      // A short stroke across a line is known by its line.
      if (Math.hypot(r.width, r.height) < svg.getBoundingClientRect().width / 20) continue;
      if (!inks.has(color)) inks.set(color, []);
      inks.get(color).push({ part: path.dataset.part, dash: path.getAttribute("stroke-dasharray") || "", width: Number(path.getAttribute("stroke-width")), kind: "line", color, r });
    }
    const around = (list) => ({ left: Math.min(...list.map((one) => one.r.left)), right: Math.max(...list.map((one) => one.r.right)), top: Math.min(...list.map((one) => one.r.top)), bottom: Math.max(...list.map((one) => one.r.bottom)) });
    const all = [...inks.values()];
    return all.flatMap((a, i) => all.slice(i + 1).flatMap((b) => {
      const p = around(a), q = around(b);
      if (p.right <= q.left || q.right <= p.left || p.bottom <= q.top || q.bottom <= p.top) return [];
      return a.filter((one) => b.some((other) => one.part === other.part && isLike(one, other))).map((one) => `${where}: "${one.part}" is drawn alike for two of them`);
    }));
  };

  return {
    ofLive: (live, where) => faultsOf(ofLive(live), where),
    ofStill: (svg, data, where) => faultsOf(ofStill(svg, data), where),
    ofPicture,
  };
})();
null;
