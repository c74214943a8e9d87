// Unpacks plotly.js and runs it as a script of its own: a page's policy lets no other text run. A notebook may have a
// module loader, to which plotly.js would give itself: it sees the home that it is given, and no other.
async function unpackPlotly(packed) {
  "use strict";
  const bytes = Uint8Array.from(atob(packed), (letter) => letter.charCodeAt(0));
  const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  const text = await new Response(unpacked).text();
  await new Promise((done) => setTimeout(done));
  const home = window.flapaeroPlotly = { exports: {} };
  const script = document.createElement("script");
  script.textContent = "((define, module, exports) => {" + text + "\n})(undefined, flapaeroPlotly, flapaeroPlotly.exports);";
  document.head.append(script);
  script.remove();
  delete window.flapaeroPlotly;
  await new Promise((done) => setTimeout(done));
  return home.exports;
}
