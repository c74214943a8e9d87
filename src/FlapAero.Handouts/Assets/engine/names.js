"use strict";
// The names that can stand where a cell is written, and what each means: on demand, from the compiler in the engine. They are shown
// below the cell, and are chosen with the arrows, with Enter, or by touch.
window.flapaeroNames = (cell, engine, tell) => {
  const MOST = 100;
  const field = cell.querySelector("textarea");
  const button = cell.querySelector("[data-do=names]");
  const isPart = (letter) => letter !== undefined && /[\p{L}\p{N}_]/u.test(letter);
  let told = null;
  let asked = 0;

  const make = (name, words = "") => {
    const element = document.createElement(name);
    element.textContent = words;
    return element;
  };

  // A press beside the field leaves the writing where it was.
  const stay = (event) => event.preventDefault();

  const close = () => {
    asked += 1;
    told?.panel.remove();
    told = null;
    field.removeAttribute("aria-activedescendant");
    field.removeAttribute("aria-controls");
  };

  const choose = (name) => {
    const [text, kind] = name;
    let to = field.selectionStart;
    while (isPart(field.value[to])) to += 1;
    field.focus();
    field.setSelectionRange(told.from, to);
    close();
    const whole = kind === "argument" ? text + ": " : text;
    // The browser's own undo takes it back again where the browser lets a script type.
    if (!document.execCommand("insertText", false, whole)) {
      field.setRangeText(whole, field.selectionStart, field.selectionEnd, "end");
      field.dispatchEvent(new Event("input", { bubbles: true }));
    }
  };

  const explain = async () => {
    const mine = told;
    const name = mine.shown[mine.at];
    let meaning;
    try {
      meaning = await engine.ask("Meaning", name[0]);
    } catch {
      return;
    }
    if (told !== mine || mine.shown[mine.at] !== name) return;
    const code = make("p");
    code.append(make("code", meaning.code));
    mine.about.replaceChildren(code, make("p", meaning.words));
  };

  const mark = (at) => {
    const { list, shown } = told;
    told.at = (at + shown.length) % shown.length;
    for (const [i, item] of [...list.children].entries()) item.setAttribute("aria-selected", String(i === told.at));
    const item = list.children[told.at];
    item.scrollIntoView({ block: "nearest" });
    field.setAttribute("aria-activedescendant", item.id);
    explain();
  };

  // Of the names, those that go on with what is written already.
  const filter = () => {
    const written = field.value.slice(told.from, field.selectionStart);
    if (field.selectionStart < told.from || [...written].some((letter) => !isPart(letter))) return close();
    const start = written.toLowerCase();
    const fitting = told.names.filter(([name]) => name.toLowerCase().startsWith(start));
    if (fitting.length === 0) {
      tell(written ? `No name that can stand here begins with “${written}”. Those of the cells above are known once they have run.` : "No name is known here. The names of a lesson are known once the cells above have run.");
      return close();
    }
    told.shown = fitting.slice(0, MOST);
    told.list.replaceChildren(...told.shown.map((name, i) => {
      const item = make("li", name[0]);
      item.append(make("small", name[1]));
      item.role = "option";
      item.id = `${field.id}-name-${i}`;
      item.addEventListener("click", () => choose(name));
      return item;
    }));
    let to = field.selectionStart;
    while (isPart(field.value[to])) to += 1;
    const whole = field.value.slice(told.from, to);
    tell(fitting.length > MOST ? `${fitting.length} names can stand here; the first ${MOST} are shown. Write on for fewer.` : `${fitting.length} ${fitting.length === 1 ? "name" : "names"} can stand here.`);
    mark(Math.max(0, told.shown.findIndex(([name]) => name === whole)));
  };

  const open = async () => {
    close();
    const mine = ++asked;
    field.focus();
    tell("Looking for names …");
    try {
      const { from, names } = await engine.ask("Names", field.value, field.selectionStart);
      // Whoever wrote on while the engine came has asked about another place.
      if (mine !== asked) return;
      const panel = make("div");
      panel.className = "names";
      const list = make("ul");
      list.role = "listbox";
      list.id = field.id + "-names";
      list.ariaLabel = "Names that can stand here";
      const about = make("div");
      about.setAttribute("aria-live", "polite");
      panel.append(list, about);
      panel.addEventListener("mousedown", stay);
      field.after(panel);
      field.setAttribute("aria-controls", list.id);
      told = { from, names, panel, list, about, shown: [], at: 0 };
      filter();
    } catch (e) {
      if (mine === asked) tell(e.message);
    }
  };

  const keys = {
    ArrowDown: () => mark(told.at + 1),
    ArrowUp: () => mark(told.at - 1),
    Enter: () => choose(told.shown[told.at]),
    Tab: () => choose(told.shown[told.at]),
    Escape: close,
  };
  field.addEventListener("keydown", (event) => {
    if (event.ctrlKey && event.key === " ") {
      event.preventDefault();
      open();
    } else if (told && !event.shiftKey && !event.ctrlKey && !event.altKey && Object.hasOwn(keys, event.key)) {
      event.preventDefault();
      event.stopImmediatePropagation();
      keys[event.key]();
    }
  });
  field.addEventListener("input", () => { if (told) filter(); else asked += 1; });
  field.addEventListener("click", close);
  field.addEventListener("blur", close);
  button.addEventListener("mousedown", stay);
  button.addEventListener("click", open);
};
