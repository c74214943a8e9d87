"use strict";
// Compares what a reader predicted with what the model gives, in the words of the library's own comparison, and tells the
// figures of it.
const predictions = (() => {
  const MINUS = "\u2212", THOUSANDS = "\u202f", GAP = "\u00a0";

  // The library's way of writing a number: a pattern such as 0.0 or 0.#, or three significant digits where there is none.
  const write = (value, pattern) => {
    const size = Math.abs(value);
    let decimals = pattern ? (pattern.split(".")[1] || "").length : size === 0 ? 0 : Math.max(0, 2 - Math.floor(Math.log10(size)));
    let digits = size.toFixed(Math.min(decimals, 12));
    if (pattern && pattern.includes("#")) digits = digits.replace(/\.?0+$/, (end) => end.startsWith(".") ? "" : end);
    const [whole, part] = digits.split(".");
    const grouped = whole.replace(/\B(?=(\d{3})+$)/g, THOUSANDS) + (part === undefined ? "" : "." + part);
    return (value < 0 && /[1-9]/.test(digits) ? MINUS : "") + grouped;
  };
  const withUnit = (value, facts) => {
    const sign = facts.units[0].sign;
    return write(value, facts.pattern) + (sign === "" ? "" : sign === "°" ? sign : GAP + sign);
  };

  // The prediction in the wanted unit; null where there is none.
  const read = (facts, text) => {
    const typed = answers.parse(text, facts);
    if (typed.empty || typed.faulty || !typed.unit) return null;
    const values = typed.readings.map((number) => number * typed.unit.factor + typed.unit.offset);
    // A comma may stand for two things: what lies nearer to the model is meant.
    return values.reduce((best, value) => Math.abs(value - facts.model) < Math.abs(best - facts.model) ? value : best);
  };

  const compare = (facts, text) => {
    const value = read(facts, text);
    if (value === null) return `${facts.what}: the model gives ${facts.shown}.` + (text.trim() === "" ? "" : ` “${text.trim()}” could not be read as a prediction.`);
    const off = value - facts.model;
    const difference = withUnit(Math.abs(off), facts);
    const share = Math.abs(off / facts.model);
    const asShare = facts.hasShare && Number.isFinite(share) && share <= 10 ? ` (${write(100 * share, share < .1 ? "0.0" : "0")}${GAP}%)` : "";
    const verdict = /[1-9]/.test(difference) ? `${difference} too ${off > 0 ? "high" : "low"}${asShare}` : "as good as exact";
    return `${facts.what}: you said ${withUnit(value, facts)}, the model gives ${facts.shown}. That is ${verdict}.`;
  };

  const wire = () => {
    for (const result of document.querySelectorAll(".compared[data-facts]")) {
      const facts = JSON.parse(result.dataset.facts);
      const input = document.querySelector(`[data-prediction="${CSS.escape(facts.prediction)}"]`);
      if (!input) continue;
      const tell = () => {
        result.textContent = compare(facts, input.value);
        const detail = { name: facts.prediction, value: read(facts, input.value) };
        for (const figure of document.querySelectorAll("figure.plot")) figure.dispatchEvent(new CustomEvent("prediction", { detail }));
      };
      input.addEventListener("input", tell);
    }
  };
  if (typeof document !== "undefined") wire();

  return { compare, write };
})();
