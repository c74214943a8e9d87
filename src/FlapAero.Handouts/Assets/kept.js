"use strict";
// What a reader types stays in this browser on this device, under the name of this page, until the reader has it forgotten.
(() => {
  const name = "flapaero " + document.body.dataset.keptAs;
  const box = document.querySelector(".typed");
  if (!box) return;
  const said = box.querySelector("[role=status]");
  const button = box.querySelector("button");
  const main = document.querySelector("main");

  const isChoice = (field) => field.type === "radio" || field.type === "checkbox";
  const keyOf = (field) => field.type === "radio" ? field.name + "=" + field.value : field.id;
  const fields = () => [...main.querySelectorAll("input, textarea")].filter(keyOf);
  const isTyped = (field) => isChoice(field) ? field.checked !== field.defaultChecked : field.value !== field.defaultValue;
  const valueOf = (field) => isChoice(field) ? field.checked : field.value;
  const typed = () => Object.fromEntries(fields().filter(isTyped).map((field) => [keyOf(field), valueOf(field)]));

  // Some browsers refuse a page from a disk, or one that is private, a place to keep anything.
  const read = () => {
    try {
      return JSON.parse(localStorage.getItem(name) || "{}") || {};
    } catch {
      return {};
    }
  };
  const write = (values) => {
    try {
      if (Object.keys(values).length) localStorage.setItem(name, JSON.stringify(values));
      else localStorage.removeItem(name);
      return true;
    } catch {
      return false;
    }
  };
  const give = (values) => {
    for (const field of fields()) {
      const value = Object.hasOwn(values, keyOf(field)) ? values[keyOf(field)] : isChoice(field) ? field.defaultChecked : field.defaultValue;
      if (value === valueOf(field) || typeof value !== typeof valueOf(field)) continue;
      if (isChoice(field)) field.checked = value;
      else field.value = value;
      field.dispatchEvent(new Event("input", { bubbles: true }));
    }
  };

  // The same page in two tabs: what this one did not touch stays as the other left it.
  const touched = new Set();
  const both = () => {
    const values = { ...read() }, here = typed();
    for (const key of touched) {
      delete values[key];
      if (Object.hasOwn(here, key)) values[key] = here[key];
    }
    return values;
  };
  const touch = (event) => {
    const field = event.target;
    if (field.type !== "radio") return void touched.add(keyOf(field));
    for (const one of fields()) if (one.type === "radio" && one.name === field.name) touched.add(keyOf(one));
  };

  let forgotten = null;
  const tell = (words, press) => {
    said.textContent = words;
    button.textContent = press;
    button.hidden = press === "";
  };
  const keep = () => {
    forgotten = null;
    if (!write(both())) return tell("This browser keeps nothing for this page: what you type is gone when you close it.", "");
    tell("What you type is kept in this browser on this device, for this page alone, and is sent nowhere.", Object.keys(typed()).length ? "Forget what I typed" : "");
  };
  button.addEventListener("click", () => {
    if (forgotten) {
      give(forgotten);
      keep();
      return;
    }
    const values = typed();
    give({});
    write({});
    touched.clear();
    forgotten = values;
    tell("It is forgotten.", "Bring it back");
  });

  give(read());
  keep();
  main.addEventListener("input", (event) => {
    touch(event);
    keep();
  });
  box.hidden = false;
})();
