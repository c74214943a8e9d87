"use strict";
// Shows what a cell puts out with the number that the reader chose; all were computed before.
(() => {
  for (const box of document.querySelectorAll(".values")) {
    const texts = box.dataset.values.split(";");
    const input = box.querySelector("input");
    const said = box.querySelector("output");
    const outputs = [...document.querySelectorAll(`.changed[data-of="${CSS.escape(input.id)}"]`)];
    input.addEventListener("input", () => {
      const at = Number(input.value);
      said.textContent = texts[at];
      input.setAttribute("aria-valuetext", texts[at]);
      outputs.forEach((output, i) => { output.hidden = i !== at; });
    });
    for (const output of outputs) output.setAttribute("aria-live", "polite");
    input.value = input.defaultValue;
    box.hidden = false;
  }
})();
