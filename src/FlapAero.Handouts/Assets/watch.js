// Only in pages of handouts --watch: a list beside the page is read again and again, as a script, which a page on a disk may load. Where it
// names another state of this page, the page is loaded anew.
(function () {
  "use strict";
  const { page, made } = document.currentScript.dataset;
  let last = null;
  window.flapaeroWatched = function (pages) {
    if (pages[page] && pages[page] !== made) window.location.reload();
  };
  window.setInterval(function () {
    if (last) last.remove();
    last = document.createElement("script");
    last.src = ".flapaero/watched.js?" + Date.now();
    document.head.append(last);
  }, 500);
})();
