"use strict";
// The instructor's page for a class: one idea a screen, made from the page's own cells, which stay where they are.
// Hints and answers open on a press of their own, so that nothing is seen before it was thought about.
(() => {
  const root = document.documentElement;
  const start = document.getElementById("project");
  const bar = document.getElementById("screens");
  const said = document.getElementById("screen-said");

  const HEADING = "h1, h2, h3, h4, h5, h6";
  const isFold = (e) => e.matches("details.hint, details.answer");
  // A screen is a cell, or a part of one: a figure or a heading that follows something else begins a screen of its own.
  const screensOf = (cell) => {
    const lead = [];
    const parts = [];
    for (const piece of cell.children) {
      if (piece.matches("details.code, .minutes")) continue;
      if (parts.length === 0 && piece.matches(HEADING + ", .tag")) {
        lead.push(piece);
        continue;
      }
      const last = parts[parts.length - 1];
      if (!last || piece.matches("figure, .problem, " + HEADING) || (last.some((e) => e.matches("figure, .problem")) && !isFold(piece))) parts.push([piece]);
      else last.push(piece);
    }
    // A cell with nothing but its heading and code has nothing to show a class.
    return parts.flatMap((part) => {
      const screen = { cell, pieces: lead.concat(part), title: titleOf(cell, lead, part), shown: [] };
      const sheet = part.find((e) => e.matches(".briefing"));
      return sheet ? sheetOf(sheet).map((shown) => ({ ...screen, sheet, shown })) : [screen];
    });
  };
  // A briefing's sheet is too long for a screen: one shows its head, each other a part of it or two items of its list.
  const HEAD = ".sheet-title, .sheet-caution, .school, .flight, .fits, .undecided, .does-not-fit";
  const sheetOf = (sheet) => {
    const shown = [[]];
    for (const part of sheet.children) {
      const items = [...part.querySelectorAll(":scope > ol > li")];
      if (part.matches(HEAD)) shown[0].push(part);
      else if (part.matches(".steps, .drills")) {
        // What is out of sight is not counted, so each item says its number.
        items.forEach((item, i) => item.style.counterSet = (part.matches(".steps") ? "step " : "drill ") + (i + 1));
        const most = part.matches(".steps") ? 2 : 1;
        for (let i = 0; i < items.length; i += most) shown.push([part, ...items.slice(i, i + most)]);
      } else if (part.matches(".signatures, .foot")) shown[shown.length - 1].push(part);
      else shown.push([part]);
    }
    return shown;
  };
  const titleOf = (cell, lead, part) => {
    if (cell.matches(".opening")) return document.querySelector("header h1");
    const inside = part.map((e) => e.matches(HEADING) ? e : e.matches(".problem") && e.querySelector(HEADING)).find(Boolean);
    return inside || lead.filter((e) => e.matches(HEADING)).pop() || cell;
  };
  const screens = [...document.querySelectorAll("main > .cell:not(.teaching)")].flatMap(screensOf);
  if (screens.length === 0) return;

  let at = -1;
  let steps = [];
  let fresh = 0;
  const before = new Map();
  const isOn = () => root.classList.contains("is-projected");
  const foldsOf = (screen) => screen.pieces.flatMap((p) => [p, ...p.querySelectorAll("details")])
    .filter((e) => isFold(e) && e.querySelector(":scope > :not(summary, pre)"));

  const show = (number) => {
    at = Math.max(0, Math.min(screens.length - 1, number));
    const screen = screens[at];
    for (const old of document.querySelectorAll(".on-screen, .on-piece, .on-part")) old.classList.remove("on-screen", "on-piece", "on-part");
    screen.cell.classList.add("on-screen");
    for (const piece of screen.pieces) piece.classList.add("on-piece");
    for (const part of screen.shown) part.classList.add("on-part");
    root.classList.toggle("is-first", at === 0);
    level(screen);
    brief(screen);
    steps = foldsOf(screen);
    for (const fold of steps) {
      if (!before.has(fold)) before.set(fold, fold.open);
      fold.open = false;
    }
    history.replaceState(null, "", "#screen-" + (at + 1));
    grow(screen);
    fit();
    scrollTo(0, 0);
    focusOn(screen.title);
    tell("");
    document.getElementById("screen-back").disabled = at === 0;
  };
  // With its part's heading out of sight, a screen's first heading comes right after the lesson's title.
  // A caption that starts with the very heading above it need not say it twice.
  const brief = (screen) => {
    for (const old of document.querySelectorAll(".said-above")) old.classList.remove("said-above");
    for (const piece of screen.pieces) for (const figure of figuresIn(piece)) {
      const name = figure.querySelector("figcaption > strong:first-child");
      if (name && name.textContent.replace(/\.$/, "") === screen.title.textContent.trim()) name.classList.add("said-above");
    }
  };
  const level = (screen) => {
    for (const old of document.querySelectorAll("main [aria-level]")) old.removeAttribute("aria-level");
    const first = screen && screen.pieces.flatMap((p) => [p, ...p.querySelectorAll("*")]).find((e) => e.matches(HEADING));
    if (first) first.setAttribute("aria-level", "2");
  };
  const tell = (more) => {
    said.textContent = "Screen " + (at + 1) + " of " + screens.length;
    const name = document.createElement("span");
    name.className = "apart";
    const title = screens[at].title;
    name.textContent = (title.matches(HEADING) ? ": " + title.textContent.trim() : "") + more;
    said.append(name);
  };
  const focusOn = (element) => {
    element.setAttribute("tabindex", "-1");
    element.focus({ preventScroll: true });
  };
  const figuresIn = (piece) => piece.matches("figure.plot") ? [piece] : [...piece.querySelectorAll("figure.plot")];
  const enlarge = (figure, isLarge) => figure.dispatchEvent(new CustomEvent("letters",
    { detail: isLarge ? Math.round(parseFloat(getComputedStyle(root).fontSize) * .86) : 0 }));

  // The page ends above the bar, however tall its words make it; what is on the screen is drawn again to its size.
  const fit = () => {
    root.style.setProperty("--bar", bar.offsetHeight + "px");
    for (const piece of screens[at].pieces) for (const figure of figuresIn(piece)) {
      arrange(figure);
      enlarge(figure, true);
    }
  };
  // A picture is as large as it can be: with its words beside it or below it. Many words beside a control stand closer.
  const scaleOf = (picture) => {
    const box = picture.getBoundingClientRect(), { width, height } = picture.viewBox.baseVal;
    return Math.min(box.width / width, box.height / height);
  };
  const arrange = (figure) => {
    figure.classList.remove("is-below", "is-close");
    const picture = figure.matches(".picture:not(:has(.plot-control))") && figure.querySelector(".plot-drawing svg");
    if (picture) {
      const beside = scaleOf(picture);
      figure.classList.add("is-below");
      if (scaleOf(picture) < 1.1 * beside || below() > 8) figure.classList.remove("is-below");
    }
    if (below() > 8 && scrollY === 0) figure.classList.add("is-close");
  };

  // Words, tables and problems take the largest letters in which they are seen whole; what folds open below them needs room.
  const SIZES = [1.35, 1.2, 1.1, 1, .92, .87];
  const hasOnlyWords = (screen) => screen.pieces.every((piece) => !piece.matches("figure") && !piece.querySelector("figure"));
  const grow = (screen) => {
    const tables = screen.pieces.flatMap((piece) => [piece, ...piece.querySelectorAll(".scroll")]).filter((e) => e.matches(".scroll"));
    const fits = (size) => {
      root.style.setProperty("--grow", size);
      const end = Math.max(...screen.pieces.map((piece) => piece.getBoundingClientRect().bottom + scrollY));
      const share = size <= 1 ? .95 : steps.length ? .66 : .8;
      return end <= share * room() && (size <= 1 || tables.every((table) => table.scrollWidth <= table.clientWidth + 1));
    };
    const size = at > 0 && hasOnlyWords(screen) ? SIZES.find(fits) || SIZES[SIZES.length - 1] : 1;
    root.style.setProperty("--grow", size);
  };

  const room = () => innerHeight - bar.offsetHeight;
  const below = () => Math.ceil(root.scrollHeight - innerHeight - scrollY);
  // Forward is what is below, then what is folded, then the next screen; back is the same way round.
  const forward = () => {
    const fold = steps.find((f) => !f.open);
    if (below() > 8) scrollBy(0, Math.min(below(), room() * .8));
    else if (fold) {
      fold.open = true;
      tell(". Opened: " + fold.querySelector("summary").textContent);
      const box = fold.getBoundingClientRect();
      const hidden = box.bottom + 2 * parseFloat(getComputedStyle(root).fontSize) - room();
      if (hidden > 0) scrollBy(0, Math.min(hidden, Math.max(0, box.top - room() * .1), below()));
    } else if (at + 1 < screens.length) show(at + 1);
  };
  const back = () => {
    const open = steps.filter((f) => f.open).pop();
    if (open && open.getBoundingClientRect().top >= 0) {
      open.open = false;
      tell(". Closed: " + open.querySelector("summary").textContent);
    } else if (scrollY > 8) scrollBy(0, -Math.min(scrollY, room() * .8));
    else if (open) open.open = false;
    else if (at > 0) show(at - 1);
  };

  const enter = (number) => {
    root.classList.add("is-projected");
    bar.hidden = false;
    show(number);
  };
  const leave = () => {
    root.classList.remove("is-projected", "is-first");
    for (const name of ["--bar", "--grow"]) root.style.removeProperty(name);
    level(null);
    bar.hidden = true;
    for (const [fold, open] of before) fold.open = open;
    before.clear();
    history.replaceState(null, "", location.href.split("#")[0]);
    for (const figure of document.querySelectorAll("figure.plot")) enlarge(figure, false);
    dispatchEvent(new Event("resize"));
    start.scrollIntoView();
    start.focus();
  };
  const named = () => {
    const match = /^#screen-(\d+)$/.exec(location.hash);
    return match ? Number(match[1]) - 1 : -1;
  };

  const keys = {
    ArrowRight: forward, PageDown: forward, " ": forward, ArrowLeft: back, PageUp: back,
    Home: () => show(0), End: () => show(screens.length - 1), Escape: leave,
  };
  // A slider, a field and a region that scrolls sideways keep the keys that are theirs; the way out works everywhere.
  const isTheirs = (element, key) => key !== "Escape" && (element.matches("input, textarea, select")
    || (key === " " && element.matches("button, summary, a"))
    || (key.startsWith("Arrow") && !!element.closest(".scroll[tabindex]")));
  addEventListener("keydown", (event) => {
    if (!isOn() || event.ctrlKey || event.altKey || event.metaKey || !Object.hasOwn(keys, event.key) || isTheirs(event.target, event.key)) return;
    event.preventDefault();
    if (event.key === " " && event.shiftKey) back();
    else keys[event.key]();
  }, true);
  addEventListener("hashchange", () => {
    if (named() >= 0) enter(named());
  });
  const fitSoon = () => {
    cancelAnimationFrame(fresh);
    fresh = requestAnimationFrame(() => {
      if (!isOn()) return;
      grow(screens[at]);
      fit();
    });
  };
  addEventListener("resize", fitSoon);
  new ResizeObserver(fitSoon).observe(bar);
  document.getElementById("screen-next").addEventListener("click", forward);
  document.getElementById("screen-back").addEventListener("click", back);
  document.getElementById("screen-leave").addEventListener("click", leave);
  start.addEventListener("click", () => enter(Math.max(0, at)));
  start.closest("[hidden]").hidden = false;
  if (named() >= 0) enter(named());
})();
