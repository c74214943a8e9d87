"use strict";
// The page of a lesson whose cells run in it. The engine lies beside the page and comes with the first cell that is run.
(() => {
  const cells = [...document.querySelectorAll(".run-code")];
  const state = document.querySelector(".engine-state");
  const button = (name) => document.querySelector(`.engine [data-do="${name}"]`);
  const tell = (words) => { state.textContent = words; };
  const engine = flapaeroEngineFrom(["runtime.js", "cells.js", "compiler.js"]);
  let isStopped = false;

  const end = (words) => {
    isStopped = true;
    engine.end(words);
    tell(words);
  };

  const setMaths = (element) => {
    for (const place of element.querySelectorAll(".math")) {
      const tex = place.textContent.trim();
      const isDisplay = tex.startsWith("\\[");
      place.innerHTML = temml.renderToString(tex.slice(2, -2), { displayMode: isDisplay, trust: false });
    }
  };

  // Nothing that a cell shows runs, asks or leads away by itself; what a figure is drawn from is data. It is looked at in a document
  // of its own, in which nothing is loaded yet.
  const cleaned = (html) => {
    const { body } = new DOMParser().parseFromString(html, "text/html");
    for (const extra of body.querySelectorAll("style, script:not(.plot-data), iframe, frame, object, embed, meta, link, base, template, animate, set")) extra.remove();
    for (const one of body.querySelectorAll("*"))
      for (const { name, value } of [...one.attributes])
        if (/^on/i.test(name) || /^[\s\0-\x20]*(javascript|vbscript):/i.test(value.replace(/[\t\n\r]/g, ""))) one.removeAttribute(name);
    return body.childNodes;
  };

  // As a page's own: a table that is wider than the page scrolls for itself, by keyboard too.
  const frameTables = (element) => {
    for (const table of element.querySelectorAll("table")) {
      const frame = document.createElement("div");
      frame.className = "scroll";
      frame.role = "group";
      frame.tabIndex = 0;
      frame.ariaLabel = table.caption?.textContent.trim() || "Table";
      table.replaceWith(frame);
      frame.append(table);
    }
  };

  const show = (cell, reply) => {
    const output = cell.querySelector(".output");
    output.replaceChildren();
    const add = (name, text, kind) => {
      const part = document.createElement(name);
      part.className = kind;
      part.textContent = text;
      output.append(part);
    };
    for (const one of reply.outputs) {
      if (!one.html) {
        add("pre", one.text, "");
        continue;
      }
      const part = document.createElement("div");
      part.append(...cleaned(one.text));
      frameTables(part);
      setMaths(part);
      output.append(part);
    }
    if (reply.failure) add("p", reply.failure, "failure");
    cell.dataset.ran = reply.failure ? "failed" : "done";
    (window.flapaeroFigures ??= []).push("here");
  };

  let last = Promise.resolve();
  const inTurn = (work) => last = last.then(work, work);

  const run = async (cell) => {
    delete cell.dataset.ran;
    button("stop").disabled = false;
    try {
      tell("The engine is coming …");
      await engine.begin();
      tell(`Running: ${cell.getAttribute("aria-label")} …`);
      const began = performance.now();
      show(cell, await engine.ask("Run", cell.querySelector("textarea").value));
      cell.dataset.took = Math.round(performance.now() - began);
      engine.keepFolder();
      tell(cell.dataset.ran === "done" ? "Done." : "The cell failed; it says why.");
    } catch (e) {
      show(cell, { outputs: [], failure: e.message });
      tell(e.message);
    } finally {
      button("stop").disabled = true;
    }
    return cell.dataset.ran === "done";
  };

  const runAll = (which) => inTurn(async () => {
    isStopped = false;
    for (const cell of which) if (!await run(cell) || isStopped) break;
  });

  const save = () => {
    const notebook = JSON.parse(document.getElementById("notebook").textContent);
    for (const cell of notebook.cells) {
      const field = document.getElementById("code-" + cell.id);
      if (field) cell.source = field.value.split(/(?<=\n)/);
    }
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([JSON.stringify(notebook, null, 1) + "\n"], { type: "application/x-ipynb+json" }));
    link.download = location.pathname.split("/").pop().replace(/\.html$/, ".ipynb");
    link.click();
    tell("Saved: the notebook opens in Jupyter too.");
  };

  const textOf = (source) => Array.isArray(source) ? source.join("") : source;
  const isSource = (source) => typeof source === "string" || (Array.isArray(source) && source.every((line) => typeof line === "string"));

  // What a saved notebook writes into which field; a file that is no notebook of this lesson is refused with the reason.
  const read = (name, text) => {
    const refuse = (why) => { throw new Error(`“${name}” ${why} Nothing was changed.`); };
    let notebook;
    try {
      notebook = JSON.parse(text);
    } catch {
      refuse("is no notebook: it is not the JSON text that “Save as a notebook” or Jupyter writes.");
    }
    if (!notebook || !Array.isArray(notebook.cells)) refuse("is no notebook: it has no list of cells.");
    const own = JSON.parse(document.getElementById("notebook").textContent).metadata.flapaero;
    const about = notebook.metadata && notebook.metadata.flapaero;
    if (!about) refuse("is a notebook, but of no lesson of FlapAero.");
    if (about.lesson !== own.lesson || about.title !== own.title) refuse(`is lesson ${about.lesson}, “${about.title}”, and this page is lesson ${own.lesson}, “${own.title}”: open it on its own lesson's page.`);
    const sources = new Map(notebook.cells.filter((cell) => cell && cell.cell_type === "code" && isSource(cell.source)).map((cell) => ["code-" + cell.id, textOf(cell.source)]));
    const fields = cells.map((cell) => cell.querySelector("textarea")).filter((field) => !field.readOnly);
    const values = new Map(fields.filter((field) => sources.has(field.id)).map((field) => [field, sources.get(field.id)]));
    if (values.size === 0) refuse("holds none of the cells that are written in on this page.");
    return { values, missing: fields.length - values.size, more: sources.size - cells.filter((cell) => sources.has("code-" + cell.dataset.cell)).length };
  };
  const write = (values) => {
    for (const [field, value] of values) {
      if (field.value === value) continue;
      field.value = value;
      field.dispatchEvent(new Event("input", { bubbles: true }));
      const cell = field.closest(".run-code");
      cell.querySelector(".output").replaceChildren();
      delete cell.dataset.ran;
    }
  };

  const chooser = document.querySelector(".engine input[type=file]");
  let before = null;
  const open = async () => {
    const file = chooser.files[0];
    if (!file) return;
    try {
      const { values, missing, more } = read(file.name, await file.text());
      before = new Map([...values.keys()].map((field) => [field, field.value]));
      write(values);
      button("back").hidden = false;
      const count = (number, words) => number === 0 ? "" : ` ${number} ${number === 1 ? "cell" : "cells"} ${words}.`;
      tell(`Opened: “${file.name}”. Press Run all.${count(missing, "of this page it does not have; they stay as they were")}${count(more, "of it this page does not have; they are not shown")}`);
    } catch (e) {
      tell(e.message);
    } finally {
      // The same file can be chosen again once it is put right.
      chooser.value = "";
    }
  };

  for (const cell of cells) {
    const field = cell.querySelector("textarea");
    cell.querySelector("[data-do=run]").addEventListener("click", () => runAll([cell]));
    if (!field.readOnly) flapaeroNames(cell, engine, tell);
    cell.querySelector("[data-do=reset]")?.addEventListener("click", () => {
      field.value = field.defaultValue;
      field.dispatchEvent(new Event("input", { bubbles: true }));
      field.focus();
    });
    field.addEventListener("keydown", (event) => {
      if (event.key !== "Enter" || !(event.shiftKey || event.ctrlKey)) return;
      event.preventDefault();
      runAll([cell]);
    });
  }
  button("all").addEventListener("click", () => runAll(cells));
  button("stop").addEventListener("click", () => end("Stopped. What you wrote is still here; press Run all."));
  button("again").addEventListener("click", () => {
    end("Started again: nothing has run yet; what you wrote is still here.");
    for (const cell of cells) {
      cell.querySelector(".output").replaceChildren();
      delete cell.dataset.ran;
    }
  });
  button("save").addEventListener("click", save);
  button("open").addEventListener("click", () => chooser.click());
  chooser.addEventListener("change", open);
  button("back").addEventListener("click", () => {
    write(before);
    button("back").hidden = true;
    tell("What was here before the notebook was opened is back.");
  });
  setMaths(document.querySelector("main"));
})();
