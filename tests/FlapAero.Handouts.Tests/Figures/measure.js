// What a person sees in figures: each piece of text with its box, and what is wrong with where it stands.
window.flapaero = (() => {
  "use strict";

  const task = () => new Promise((go) => setTimeout(go));
  const wait = async (isReady, tries = 400) => {
    while (tries-- > 0 && !isReady()) await new Promise((go) => setTimeout(go, 15));
    if (!isReady()) throw new Error("a figure was not drawn: " + isReady);
  };
  const nameOf = (figure) => figure.id.replace(/^fig-/, "");
  const isPicture = (figure) => figure.classList.contains("picture");

  // The boxes of letters are taller than the letters: what is above a capital and below the line is not text.
  const boxOf = (element, of) => {
    const r = element.getBoundingClientRect();
    return { left: r.left, right: r.right, top: r.top + 0.2 * r.height, bottom: r.bottom - 0.18 * r.height, whole: r, of, words: element.textContent.trim() };
  };
  // A label of several lines is one piece; of an axis each number is.
  const textsOf = (drawing) => [...drawing.querySelectorAll("text")].filter((t) => t.textContent.trim() && t.getClientRects().length).flatMap((t) => {
    const lines = [...t.querySelectorAll(":scope > tspan.line")];
    const parent = t.closest(".annotation-text-g") || t.parentElement;
    const of = parent.matches(".annotation-text-g") || (parent.matches("g[fill]") && !parent.matches(".xtick, .ytick")) ? parent : t;
    return (lines.length ? lines : [t]).map((line) => boxOf(line, of));
  }).filter((box) => box.words && box.right > box.left);

  const faultsOf = (drawing, where) => {
    const texts = textsOf(drawing);
    const faults = [];
    if (texts.length < 3) faults.push(`${where}: only ${texts.length} texts were found`);
    const edge = drawing.getBoundingClientRect();
    texts.forEach((a, i) => {
      if (a.whole.left < edge.left - 1 || a.whole.right > edge.right + 1 || a.top < edge.top - 1 || a.bottom > edge.bottom + 1)
        faults.push(`${where}: "${a.words}" leaves its figure by ${Math.round(Math.max(edge.left - a.whole.left, a.whole.right - edge.right, edge.top - a.top, a.bottom - edge.bottom))} px`);
      for (const b of texts.slice(i + 1)) {
        if (a.of === b.of) continue;
        const across = Math.min(a.right, b.right) - Math.max(a.left, b.left), down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
        if (across > 1 && down > 1) faults.push(`${where}: "${a.words}" on "${b.words}" by ${Math.round(across)} by ${Math.round(down)} px`);
      }
    });
    return faults;
  };

  const linesOf = (drawing) => [...drawing.querySelectorAll(".js-line, polyline, [data-part=path], [data-part=force]")]
    .filter((line) => line.getClientRects().length).map((line) => parseFloat(getComputedStyle(line).strokeWidth));
  // A line is as thick as letters are large, whatever the drawing is scaled to: both grow alike.
  const thinOf = (drawing, where) => {
    const text = [...drawing.querySelectorAll("text")].find((t) => t.getClientRects().length);
    const letters = parseFloat(getComputedStyle(text).fontSize);
    return linesOf(drawing).map((width) => width / letters).filter((share) => share < 0.14 || share > 0.22)
      .slice(0, 1).map((share) => `${where}: a line is ${share.toFixed(3)} of its letters thick`);
  };

  const drawingOf = (figure) => figure.querySelector(".plot-live svg.main-svg") || figure.querySelector(".plot-drawing svg");
  const draw = async (figure) => {
    figure.scrollIntoView({ block: "center" });
    if (!isPicture(figure)) await wait(() => {
      const live = figure.querySelector(".plot-live"), svg = live && live.querySelector("svg.main-svg");
      return svg && Math.abs(svg.getBoundingClientRect().width - live.clientWidth) < 2 && Math.abs(svg.getBoundingClientRect().height - live.clientHeight) < 2;
    });
    await task();
  };
  // At both ends of its control, where it has one, and left where it starts.
  const ofFigure = async (figure, size, found) => {
    await draw(figure);
    const input = figure.querySelector(".plot-control input");
    const look = (state) => {
      const drawing = drawingOf(figure).closest(".plot-live") || drawingOf(figure);
      const where = `${nameOf(figure)}, ${size}${state}`;
      found.labels.push(...faultsOf(drawing, where));
      found.lines.push(...thinOf(drawing, where));
      found.grey.push(...isPicture(figure) ? flapaeroGrey.ofPicture(drawing, where) : flapaeroGrey.ofLive(drawing, where));
      found.looked++;
    };
    if (!input) look("");
    else for (const value of [input.min, input.max, input.defaultValue]) {
      input.value = value;
      input.dispatchEvent(new Event("input"));
      await task();
      if (value !== input.defaultValue) look(", at " + figure.querySelector("output").textContent);
    }
  };
  // All that is seen in an element; what is hidden is left out with all that it holds, which is nearly all of a projected page.
  const seenIn = (element) => [...element.children].filter((child) => child.checkVisibility() || getComputedStyle(child).display === "contents")
    .flatMap((child) => [child, ...seenIn(child)]);
  const seen = () => [...document.querySelectorAll("figure.plot")].filter((figure) => figure.checkVisibility());

  // The page's figures at the size that its window has.
  const ofPage = async (size) => {
    const found = nothing();
    document.querySelectorAll("details:has(figure.plot)").forEach((fold) => fold.open = true);
    for (const figure of seen()) await ofFigure(figure, size, found);
    found.figures.push(...seen().map(nameOf));
    // A link to a part leads to its heading, not to what the caution at the head covers of it.
    const caution = document.querySelector(".caution");
    for (const heading of document.querySelectorAll("main h2[id]")) {
      heading.scrollIntoView();
      const top = heading.getBoundingClientRect().top, over = getComputedStyle(caution).position === "sticky" ? caution.getBoundingClientRect().bottom : 0;
      if (top < over - 1) found.covered.push(`${size}: the caution covers "${heading.textContent}"`);
    }
    return found;
  };
  const nothing = () => ({ figures: [], looked: 0, screens: 0, labels: [], lines: [], grey: [], empty: [], covered: [], tall: [] });
  // The still drawings, which paper and viewers without scripts show.
  const ofStill = async () => {
    const found = nothing();
    for (const figure of seen().filter((one) => !isPicture(one))) {
      figure.classList.remove("is-drawn", "is-coming");
      const drawing = figure.querySelector(".plot-drawing svg"), where = nameOf(figure) + ", still";
      found.labels.push(...faultsOf(drawing, where));
      found.lines.push(...thinOf(drawing, where));
      found.grey.push(...flapaeroGrey.ofStill(drawing, JSON.parse(figure.querySelector("script.plot-data").textContent).data, where));
      found.looked++;
      figure.classList.add("is-drawn", "is-coming");
    }
    return found;
  };

  const go = (number) => new Promise((there) => {
    if (location.hash === "#screen-" + number) return there();
    addEventListener("hashchange", () => setTimeout(there), { once: true });
    location.hash = "#screen-" + number;
  });
  const isBehind = (element, bar) => {
    const r = element.getBoundingClientRect(), b = bar.getBoundingClientRect();
    return r.width > 1 && r.height > 1 && r.bottom > b.top + 1 && r.top < b.bottom;
  };
  // Each screen of a projected lesson: what it holds, what the bar hides at its end, and its figures.
  const ofScreens = async (size) => {
    const bar = document.getElementById("screens");
    const found = nothing();
    const looked = new Set();
    const count = Number(document.getElementById("screen-said").textContent.match(/of (\d+)/)[1]);
    for (let n = 1; n <= count; n++) {
      await go(n);
      const screen = document.querySelector(".on-screen");
      const where = `screen ${n}, ${size}`;
      const said = screen ? [...screen.querySelectorAll("*")].filter((e) => e.checkVisibility() && !e.closest(".apart, summary, .said-above")
        && (e.matches("figure, math, input, pre") || (!/^H[1-6]$/.test(e.tagName) && !e.closest("h1, h2, h3, h4, h5, h6, .tag") && [...e.childNodes].some((c) => c.nodeType === 3 && c.data.trim())))) : [];
      const inSight = said.filter((e) => { const r = e.getBoundingClientRect(); return r.height > 0 && r.top < innerHeight - bar.offsetHeight && r.bottom > 0; });
      if (inSight.length === 0) found.empty.push(`${where}: nothing is seen but ${JSON.stringify((screen ? screen.innerText : "").trim().slice(0, 60))}`);
      const heading = screen && [...screen.querySelectorAll("h1, h2, h3, figure, p")].find((e) => e.checkVisibility());
      if (heading && heading.getBoundingClientRect().top < -1) found.covered.push(`${where}: it begins above the screen`);
      scrollTo(0, 1e6);
      const last = seenIn(document.querySelector("main")).filter((e) => isBehind(e, bar) && !e.closest(".apart"));
      if (last.length) found.covered.push(`${where}: the bar hides ${last[last.length - 1].outerHTML.slice(0, 80)}`);
      scrollTo(0, 0);
      for (const figure of screen ? [...screen.querySelectorAll("figure.plot")].filter((f) => f.checkVisibility()) : []) {
        if (looked.has(figure)) continue;
        looked.add(figure);
        await ofFigure(figure, size, found);
        scrollTo(0, 0);
        const b = drawingOf(figure).getBoundingClientRect();
        if (b.height < innerHeight * 0.4) found.empty.push(`${where}: ${nameOf(figure)} is only ${Math.round(b.height)} px tall`);
      }
      const over = Math.ceil(document.documentElement.scrollHeight - innerHeight);
      if (over > 8) found.tall.push(`${where}: ${over} px of it are below the screen, of ${JSON.stringify(screen.innerText.trim().slice(0, 60))}`);
    }
    found.figures.push(...[...looked].map(nameOf));
    found.screens = count;
    return found;
  };
  return { ofPage, ofStill, ofScreens };
})();
null;
