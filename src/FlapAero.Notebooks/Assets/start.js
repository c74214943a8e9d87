// Once a notebook: unpacks plotly.js, which the library carries, and draws the figures that have asked for it so far.
const start = async (packed) => {
  "use strict";
  const queue = window.flapaeroFigures;
  if (queue && !Array.isArray(queue)) {
    queue.push("again");
    return;
  }
  if (typeof DecompressionStream === "undefined") {
    setTimeout(() => {
      for (const line of document.querySelectorAll(".lesson-ready"))
        line.append(" This browser, from before 2023, shows figures as still pictures; any newer one shows them live.");
    });
    return;
  }
  const bytes = Uint8Array.from(atob(packed), (letter) => letter.charCodeAt(0));
  const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  const library = { exports: {} };
  // A notebook may have a module loader, to which plotly.js would give itself: it sees this one only.
  new Function("define", "module", "exports", await new Response(unpacked).text())(undefined, library, library.exports);
  drawFigures(library.exports);
};
