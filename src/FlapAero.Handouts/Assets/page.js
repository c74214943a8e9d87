"use strict";
(() => {
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
  // A link into a fold opens it, in browsers that do not by themselves. What is no text behind the address's # leads nowhere.
  const linked = () => {
    try {
      return document.getElementById(decodeURIComponent(location.hash.slice(1)));
    } catch {
      return null;
    }
  };
  const openForLink = () => {
    const target = linked();
    for (let fold = target && target.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
  };
  const closeAfterPrint = () => {
    for (const details of opened.splice(0)) details.open = false;
  };

  // Where a browser prints nothing in a page's margins, the caution stands inside them.
  document.documentElement.classList.toggle("without-margins", !window.CSSMarginRule);
  tabStops();
  openForLink();
  addEventListener("hashchange", openForLink);
  addEventListener("resize", tabStops);
  document.addEventListener("toggle", tabStops, true);
  addEventListener("beforeprint", openForPrint);
  addEventListener("afterprint", closeAfterPrint);
})();
