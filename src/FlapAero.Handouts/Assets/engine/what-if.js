"use strict";
// The what-if page. The model runs in a worker; this script reads the setting, asks, and draws the answer.
(() => {
  const about = JSON.parse(document.getElementById("what-if").textContent);
  const $ = (id) => document.getElementById(id);
  const find = (selector) => document.querySelector(selector);
  const press = (name) => find(`[data-do="${name}"]`);
  const fieldOf = new Map(about.fields.map((field) => [field.key, field]));
  const aeroplanes = new Map(about.aeroplanes.map((one) => [one.name, one]));
  const usual = Object.fromEntries(about.fields.map((field) => [field.key, field.usual]));
  usual.mass = about.aeroplanes[0].most;
  const choices = { aeroplane: about.aeroplanes[0].name, surface: about.surface, cutsWithRoundOut: true, units: about.units };
  const first = () => ({ ...choices, first: 0, second: about.aeroplanes[0].flaps.length - 1, ...usual });

  let setting = first();
  let shown = null;
  let base = null;
  let typedWrong = new Map();

  // Units: what is kept is in the fields' own; what is shown follows the choice.
  const SHOWN = {
    aviation: { m: ["ft", 1 / 0.3048] },
    si: { kt: ["m/s", 1852 / 3600], ft: ["m", 0.3048], "ft/min": ["m/s", 0.3048 / 60] },
  };
  const unitOf = (unit) => SHOWN[setting.units][unit]?.[0] ?? unit;
  const factor = (unit) => SHOWN[setting.units][unit]?.[1] ?? 1;
  const plain = (value, digits) => value.toFixed(digits).replace(/^-(?=0(\.0*)?$)/, "").replace("-", "\u2212")
    .replace(/\B(?=(\d{3})+(?!\d))(?<!\.\d*)/g, "\u202F");
  const joined = (number, unit) => unit === "" ? number : number + (unit === "°" ? "" : "\u00A0") + unit;
  const digitsOf = (unit, digits) => unit === "ft/min" && setting.units === "si" ? 1 : digits;
  const say = (value, unit, digits = 0) => joined(plain(value * factor(unit), digitsOf(unit, digits)), unitOf(unit));
  const inField = (value, unit) => String(Math.round(value * factor(unit) * 100) / 100);
  const decimals = (step) => step < 0.05 ? 2 : step < 0.5 ? 1 : 0;
  const sayField = (field, value) => say(value, field.unit, setting.units === "si" && field.unit === "kt" ? 1 : decimals(field.step));

  const taken = new Map();
  const state = find(".engine-state");
  const tell = (words) => { if (state.textContent !== words) state.textContent = words; };
  // An engine that starts anew is told again what was dropped on the page.
  const { ask, end, keepFolder } = flapaeroEngineFrom(["runtime.js"], async (post) => {
    for (const { name, text } of taken.values()) await post({ call: "Take", given: [name, text] });
  });

  const json = (of = setting) => JSON.stringify(of);

  // Reading and writing the controls.
  const aimOf = (of) => of.height * 0.3048 / Math.tan(of.path * Math.PI / 180);
  const AIM = { key: "aim", label: "Aiming point", unit: "m", step: 1 };
  const valueOf = (key) => key === "aim" ? aimOf(setting) : setting[key];
  const about1 = (key) => key === "aim" ? AIM : fieldOf.get(key);
  const put = (key, isText = true) => {
    const field = about1(key);
    const value = valueOf(key);
    if (!Number.isFinite(value)) return;
    const slider = $(key + "-slider");
    if (isText && !typedWrong.has(key)) $(key).value = inField(value, field.unit);
    if (Number(slider.value) !== value) slider.value = value;
    slider.setAttribute("aria-valuetext", sayField(field, value));
  };
  const putUnits = () => {
    for (const row of document.querySelectorAll(".field[data-field]")) row.querySelector(".unit").textContent = unitOf(about1(row.dataset.field).unit);
  };
  const putFlaps = () => {
    const plane = aeroplanes.get(setting.aeroplane);
    if (!plane) return;
    for (const side of ["first", "second"]) {
      $(side).replaceChildren(...plane.flaps.map((name, i) => new Option(name, i, false, i === setting[side])));
      $(side).value = setting[side];
    }
    for (const [edge, value] of [["min", plane.least], ["max", plane.most]]) $("mass-slider")[edge] = value;
  };
  const putAll = () => {
    if (![...$("aeroplane").options].some((option) => option.value === setting.aeroplane)) $("aeroplane").append(new Option(setting.aeroplane));
    $("aeroplane").value = setting.aeroplane;
    $("surface").value = setting.surface;
    $("units").value = setting.units;
    $("cutsWithRoundOut").checked = setting.cutsWithRoundOut;
    putFlaps();
    putUnits();
    for (const key of [...fieldOf.keys(), "aim"]) put(key);
    $("cut-slider").disabled = $("cut").disabled = setting.cutsWithRoundOut;
  };
  const readText = (text) => {
    const cleaned = text.trim().replace("\u2212", "-").replace(",", ".");
    return cleaned === "" ? NaN : Number(cleaned);
  };

  // One question at a time; of several changes the last counts.
  let wanted = false;
  let busy = false;
  let rests = 0;
  const change = (key) => {
    // Short of a right number nothing is computed; what was typed stays and is spoken of.
    wanted = true;
    find(".put-aside").hidden = true;
    if (key === "path" || key === "height") put("aim");
    if ($("predict").checked && shown) return guess();
    pump();
  };
  const pump = async () => {
    if (busy) return;
    busy = true;
    try {
      while (wanted) {
        wanted = false;
        const of = { ...setting };
        const answer = await ask("Land", json(of));
        show(of, answer);
      }
    } catch (e) {
      end(e.message);
      tell(`The model failed: ${e.message} The next change starts it anew.`);
    } finally {
      busy = false;
    }
    clearTimeout(rests);
    rests = setTimeout(rest, 200);
  };
  // What takes longer comes once nothing moves.
  const rest = async () => {
    keepAddress();
    const of = json();
    const isOld = () => wanted || busy || of !== json();
    try {
      if (isRefused) return await showHelp(of, isOld);
      for (const { name } of about.pictures) {
        if (isOld()) return;
        const answer = await ask("Picture", of, name);
        if (isOld()) return;
        const place = $("picture-" + name);
        place.classList.remove("waits");
        if (answer.html) place.innerHTML = answer.html;
        else if (answer.why) place.replaceChildren(element("p", answer.why));
      }
      document.documentElement.dataset.whatIf = "rested";
      keepFolder();
    } catch (e) {
      end(e.message);
      tell(`The model failed: ${e.message} The next change starts it anew.`);
    }
  };

  const element = (tag, text, kind) => {
    const made = document.createElement(tag);
    if (text) made.textContent = text;
    if (kind) made.className = kind;
    return made;
  };
  const nameOf = (side) => `flaps ${side.flaps}`;
  const capital = (words) => words[0].toUpperCase() + words.slice(1);
  const names = (answer) => answer.sides[0].flaps === answer.sides[1].flaps
    ? [capital(nameOf(answer.sides[0])), capital(nameOf(answer.sides[1])) + " again"] : answer.sides.map((side) => capital(nameOf(side)));

  // The answer.
  let isRefused = false;
  const stale = (is) => { for (const part of document.querySelectorAll(".can-be-stale")) part.classList.toggle("is-stale", is); };
  const show = (of, answer) => {
    const reasons = [...(answer.faults ?? []).map((fault) => ({ field: fault.field, text: fault.text })),
      ...(answer.sides ?? []).flatMap((side, i) => side.refusal ? [{ field: "", text: `${names(answer)[i]}: ${side.refusal}` }] : [])];
    for (const [key, text] of typedWrong) reasons.unshift({ field: key, text });
    showFaults(reasons);
    isRefused = reasons.length > 0;
    stale(isRefused);
    tell(isRefused ? "This setting makes no two landings; what is drawn is the last that did." : "Live: the model runs in this page.");
    if (isRefused) {
      showRefusal(reasons);
      return;
    }
    find(".refusal").hidden = true;
    const before = shown;
    shown = { of, answer };
    find(".changed").textContent = before ? changed(before, shown) : "Move one thing.";
    speak();
    showVerdicts();
    drawBoth();
    showTable();
    for (const picture of document.querySelectorAll(".picture-place")) picture.classList.add("waits");
    document.documentElement.dataset.whatIf = "live";
  };
  const showFaults = (reasons) => {
    for (const row of document.querySelectorAll(".field[data-field]")) {
      const fault = reasons.find((reason) => reason.field === row.dataset.field);
      row.toggleAttribute("data-wrong", Boolean(fault));
      row.querySelector(".fault")?.remove();
      const input = row.querySelector("input[type=text]");
      input.setAttribute("aria-invalid", fault ? "true" : "false");
      if (fault) row.append(element("p", fault.text, "fault"));
    }
  };
  let refusalText = "";
  const showRefusal = (reasons) => {
    const box = find(".refusal");
    const text = reasons.map((reason) => reason.text).join("\n");
    box.hidden = false;
    if (text !== refusalText || !box.childElementCount)
      box.replaceChildren(element("p", "No two landings come of this setting. The picture is the last that did."), ...reasons.map((reason) => element("p", reason.text)), element("div", "", "helps"));
    refusalText = text;
    speak(reasons[0].text);
  };
  const showHelp = async (of, isOld) => {
    if (typedWrong.size) return;
    const answer = await ask("Help", of);
    if (isOld() || !isRefused) return;
    const helps = find(".refusal .helps");
    if (!helps) return;
    if (!answer.help?.length) {
      if (answer.help) helps.replaceChildren(element("p", "No single change of one number helps; go back to the setting before, or begin as at first."));
      return;
    }
    const row = element("p", "", "press");
    row.append("One of these alone would help: ");
    for (const { field, value } of answer.help.slice(0, 5)) {
      const button = element("button", `${fieldOf.get(field).label}: ${sayField(fieldOf.get(field), value)}`);
      button.type = "button";
      button.addEventListener("click", () => {
        setting[field] = value;
        if (field === "cut") setting.cutsWithRoundOut = false;
        putAll();
        change(field);
        $(field).focus();
      });
      row.append(button);
    }
    helps.replaceChildren(row);
  };
  let spoken = 0;
  const speak = (words) => {
    clearTimeout(spoken);
    spoken = setTimeout(() => { $("said").textContent = words ?? find(".changed").textContent; }, 500);
  };

  // What changed, in words.
  const moved = (by, less, more, at) => Math.abs(by) < 0.5 ? `${at} where it did` : `${at} ${say(Math.abs(by), "m")} ${by < 0 ? less : more}`;
  const wordOf = (key, of) => {
    const field = fieldOf.get(key);
    if (field) return sayField(field, of[key]);
    if (key === "first" || key === "second") return aeroplanes.get(of.aeroplane)?.flaps[of[key]] ?? "";
    if (key === "cutsWithRoundOut") return of[key] ? "with the round-out" : "at its own height";
    if (key === "surface") return [...$("surface").options].find((option) => option.value === of.surface)?.textContent ?? "";
    return of[key];
  };
  const labelOf = (key) => fieldOf.get(key)?.label ?? { first: "First flaps", second: "Second flaps", surface: "Surface", aeroplane: "Aeroplane", cutsWithRoundOut: "The throttle closes" }[key];
  const differences = (a, b) => Object.keys(a).filter((key) => key !== "units" && a[key] !== b[key] && !(key === "cut" && a.cutsWithRoundOut && b.cutsWithRoundOut));
  const changed = (before, after) => {
    const keys = differences(before.of, after.of);
    if (!keys.length) return before.of.units === after.of.units ? "Nothing changed." : "The units changed, and nothing else.";
    const what = keys.slice(0, 3).map((key) => `${labelOf(key)} from ${wordOf(key, before.of)} to ${wordOf(key, after.of)}`).join(", ") + (keys.length > 3 ? ` and ${keys.length - 3} more` : "");
    return `${what}. ` + after.answer.sides.map((side, i) => {
      const now = side.numbers, then = before.answer.sides[i].numbers;
      return `${names(after.answer)[i]}: the wheels touch ${moved(now.touchdown - then.touchdown, "earlier", "later", "").trim()}, and it stops ${moved(now.stop - then.stop, "earlier", "later", "").trim()}.`;
    }).join(" ");
  };

  const verdict = (side, name, answer, of) => {
    const item = element("li");
    item.append(element("strong", name + ": "));
    const { touchdown, stop, approach, approachIndicated } = side.numbers;
    const past = touchdown - answer.third, left = answer.available - stop;
    const plane = aeroplanes.get(of.aeroplane);
    const needed = of.margin * stop;
    const across = Math.abs(of.across) + (of.across ? of.gust : 0);
    const wind = !of.across ? "" : !plane?.crosswind ? " The file gives no crosswind to hold the wind against."
      : across > plane.crosswind ? ` The crosswind, ${say(across, "kt")} in the gusts, is above the manual's ${say(plane.crosswind, "kt")}.` : ` The crosswind is within the manual's ${say(plane.crosswind, "kt")}.`;
    item.append(`${say(approach, "kt", 0)} calibrated on final${approachIndicated ? ` (${say(approachIndicated, "kt", 0)} on the needle)` : ""}. `
      + `The wheels touch ${say(Math.abs(past), "m")} ${past > 0 ? "past the first third: a go-around" : "before the end of the first third"}. `
      + (left >= 0 ? `The aeroplane stops ${say(left, "m")} before the end.` : `The aeroplane runs ${say(-left, "m")} past the end of the runway.`)
      + ` With the margin of ${plain(of.margin, 2)} it needs ${say(needed, "m")}: ${needed <= answer.available ? "the runway has them" : "more than the runway has"}.` + wind);
    return item;
  };
  const showVerdicts = () => find(".verdicts").replaceChildren(
    ...shown.answer.sides.map((side, i) => verdict(side, names(shown.answer)[i], shown.answer, shown.of)));

  // The drawing of both landings: along to scale, heights raised.
  const SVG = "http://www.w3.org/2000/svg";
  const draw = (tag, given, text) => {
    const made = document.createElementNS(SVG, tag);
    for (const [name, value] of Object.entries(given)) made.setAttribute(name, value);
    if (text !== undefined) made.textContent = text;
    return made;
  };
  const measure = document.createElement("canvas").getContext("2d");
  const widthOf = (text, size) => {
    measure.font = `${size}px Inter, system-ui, sans-serif`;
    return measure.measureText(text).width;
  };
  const n = (value) => Math.round(value * 10) / 10;
  const landed = (answer) => answer?.sides.every((side) => side.path);
  const drawBoth = () => {
    const place = find(".both .plot-drawing");
    const wide = Math.max(280, place.clientWidth || 280), size = wide < 500 ? 12 : wide < 900 ? 14 : 17, line = size + 4;
    const { answer, of } = shown;
    const sides = answer.sides, other = base && landed(base.answer) ? base.answer.sides : [];
    const before = Math.max(of.displaced, 0.12 * answer.available);
    const last = Math.max(answer.available, ...sides.concat(other).map((side) => side.numbers.stop)) * 1.02;
    const scale = (wide - 16) / (last + before);
    const X = (along) => 8 + (along + before) * scale;
    const slope = Math.tan(of.path * Math.PI / 180);
    const tall = of.height * 0.3048 + before * slope, room = wide < 500 ? 90 : 170;
    const raised = Math.max(1, Math.min(12, Math.floor(room / (tall * scale))));
    const ground = 10 + Math.min(room, raised * tall * scale) + line, Y = (up) => ground - up * scale * raised;
    const strip = wide < 500 ? 16 : 22;
    const parts = [];
    const styleOf = (side) => about.styles[side.style];
    // The strip, its paint, the threshold, the aiming point, the first third.
    parts.push(draw("path", { fill: "#6E6E6E", d: `M${n(X(-of.displaced))} ${ground}H${n(X(answer.available))}v${strip}H${n(X(-of.displaced))}Z`, "data-part": "runway" }));
    if (of.displaced > 0) parts.push(draw("path", { stroke: "#fff", "stroke-width": 2, fill: "none", "stroke-dasharray": "10,8", d: `M${n(X(-of.displaced) + 4)} ${ground + strip / 2}H${n(X(0) - 4)}` }));
    parts.push(draw("path", { stroke: "#fff", "stroke-width": 4, d: `M${n(X(0) + 2)} ${ground + 1}v${strip - 2}` }));
    parts.push(draw("path", { fill: "#fff", d: `M${n(X(answer.aim))} ${ground + 3}h${n(Math.max(4, 45 * scale))}v${strip - 6}h-${n(Math.max(4, 45 * scale))}Z`, "data-part": "aiming-point" }));
    parts.push(draw("path", { stroke: "#000", "stroke-width": 2, "stroke-dasharray": "3,3", d: `M${n(X(answer.third))} ${ground - 8}v${strip + 16}`, "data-part": "first-third" }));
    const labels = [["threshold", 0], ["aiming point", answer.aim], [`first third ${say(answer.third, "m")}`, answer.third], [`end ${say(answer.available, "m")}`, answer.available]]
      .map(([text, along]) => ({ text, x: X(along), color: "#000" }));
    // The paths from the side.
    const path = (side) => {
      let d = `M${n(X(-before))} ${n(Y(side.path[1] / 100 + before * slope))}`;
      for (let i = 0; i < side.path.length; i += 2) d += `L${n(X(side.path[i] / 100))} ${n(Y(side.path[i + 1] / 100))}`;
      return d;
    };
    for (const side of other) parts.push(draw("path", { fill: "none", stroke: "#000", "stroke-width": 1.2, "stroke-dasharray": "16,4", d: path(side), "data-part": "base-path" }));
    for (const side of sides) parts.push(draw("path", { fill: "none", stroke: styleOf(side).line, "stroke-width": 2.5, "stroke-dasharray": styleOf(side).dash, d: path(side), "data-part": "path" }));
    // The marks of the runway, then a lane for each roll.
    let y = ground + strip + 4;
    const rows = (marks, top) => {
      const ends = [], texts = [];
      for (const mark of marks.sort((a, b) => a.x - b.x)) {
        const length = widthOf(mark.text, size), from = Math.min(Math.max(mark.x - length / 2, 2), wide - 2 - length);
        let row = ends.findIndex((end) => end + 8 < from);
        if (row < 0) row = ends.push(0) - 1;
        ends[row] = from + length;
        const at = top + row * line;
        parts.push(draw("path", { stroke: mark.color, "stroke-width": 1, d: `M${n(mark.x)} ${top - 3}V${n(at + 2)}` }));
        texts.push(draw("text", { x: n(from), y: n(at + size), fill: mark.color, "stroke": "#fff", "stroke-width": 4, "paint-order": "stroke", "stroke-linejoin": "round" }, mark.text));
      }
      // Over all leaders, so that none crosses a word.
      parts.push(...texts);
      return top + Math.max(1, ends.length) * line;
    };
    y = rows(labels, y) + 10;
    sides.forEach((side, i) => {
      const style = styleOf(side), { touchdown, noseDown, stop } = side.numbers;
      parts.push(draw("text", { x: 2, y: n(y + size), fill: style.text, "font-weight": 700 }, names(answer)[i]));
      parts.push(draw("path", { stroke: style.line, "stroke-width": 2.5, fill: "none", "stroke-dasharray": style.dash, d: `M${n(widthOf(names(answer)[i], size) * 1.12 + 8)} ${n(y + size * 0.65)}h44` }));
      y += line + 6;
      parts.push(draw("path", { stroke: style.line, "stroke-width": 3, d: `M${n(X(touchdown))} ${n(y)}H${n(X(noseDown))}`, "data-part": "roll-nose-up" }));
      parts.push(draw("path", { stroke: style.line, "stroke-width": 9, d: `M${n(X(noseDown))} ${n(y)}H${n(X(stop))}`, "data-part": "roll-braked" }));
      parts.push(draw("path", { stroke: style.line, "stroke-width": 3, d: `M${n(X(touchdown))} ${n(y - 8)}v16` }));
      const end = X(answer.available);
      parts.push(draw("path", { stroke: "#000", "stroke-width": 2, d: `M${n(end)} ${n(y - 8)}v16` }));
      const marks = [{ text: `touches ${say(touchdown, "m")}`, x: X(touchdown), color: style.text }, { text: stop > answer.available ? `runs off, stops ${say(stop, "m")}` : `stops ${say(stop, "m")}`, x: X(stop), color: style.text }];
      if (other[i]) {
        for (const [what, at] of [["base touches", other[i].numbers.touchdown], ["base stops", other[i].numbers.stop]]) {
          parts.push(draw("circle", { cx: n(X(at)), cy: n(y), r: 5, fill: "#fff", stroke: "#000", "stroke-width": 2 }));
          marks.push({ text: `${what} ${say(at, "m")}`, x: X(at), color: "#000" });
        }
      }
      y = rows(marks, y + 9) + 8;
    });
    const svg = draw("svg", { viewBox: `0 0 ${wide} ${n(y)}`, "font-size": size, "font-family": "Inter, system-ui, sans-serif" });
    svg.append(...parts);
    place.replaceChildren(svg);
    place.setAttribute("aria-label", sides.map((side, i) => `${names(answer)[i]}: the wheels touch ${say(side.numbers.touchdown, "m")} past the threshold, the aeroplane stops at ${say(side.numbers.stop, "m")}.`).join(" ")
      + ` The first third ends at ${say(answer.third, "m")}, the runway at ${say(answer.available, "m")}.`);
    find(".raised").textContent = raised > 1 ? `Heights are drawn ${raised} times as tall.` : "Heights are to the same scale.";
  };

  // The numbers. Rows are made once and filled anew.
  let table = null;
  const showTable = () => {
    const columns = [...shown.answer.sides.map((side, i) => [names(shown.answer)[i], side.numbers]),
      ...(base ? base.answer.sides.map((side, i) => [`Base: ${names(base.answer)[i].toLowerCase()}`, side.numbers]) : [])];
    const key = columns.map(([name]) => name).join("|") + setting.units;
    if (table?.key !== key) {
      const made = element("table");
      made.append(element("caption", "Both landings in numbers"));
      const head = made.createTHead().insertRow();
      for (const name of ["", ...columns.map(([name]) => name)]) {
        const cell = element(name ? "th" : "td", name);
        if (name) cell.scope = "col";
        head.append(cell);
      }
      const cells = [];
      let part = "";
      for (const row of about.rows) {
        if (row.part !== part) {
          part = row.part;
          const group = made.appendChild(element("tbody")).insertRow();
          const cell = element("th", part);
          cell.scope = "rowgroup";
          cell.colSpan = columns.length + 1;
          group.append(cell);
        }
        const line = made.tBodies[made.tBodies.length - 1].insertRow();
        const name = element("th", row.label);
        name.scope = "row";
        line.append(name);
        cells.push(columns.map(() => line.insertCell()));
      }
      find(".numbers-of-both").replaceChildren(made);
      table = { key, cells };
      dispatchEvent(new Event("resize"));
    }
    about.rows.forEach((row, r) => columns.forEach(([, numbers], c) => {
      const value = numbers[row.key];
      const text = value === undefined ? "none" : say(value, row.unit, row.digits);
      if (table.cells[r][c].textContent !== text) table.cells[r][c].textContent = text;
    }));
  };
  const csv = () => {
    if (!shown) return;
    const quoted = (text) => /[",\n]/.test(text) ? `"${String(text).replaceAll("\"", "\"\"")}"` : String(text);
    const columns = [...shown.answer.sides.map((side, i) => [names(shown.answer)[i], side.numbers]), ...(base ? base.answer.sides.map((side, i) => [`Base: ${names(base.answer)[i]}`, side.numbers]) : [])];
    const lines = [["what", "unit", ...columns.map(([name]) => name)], ["aeroplane", "", ...columns.map((_, i) => (i < 2 ? shown : base).of.aeroplane)], ["surface", "", ...columns.map((_, i) => (i < 2 ? shown : base).of.surface)],
      ...about.fields.map((field) => [field.label, field.unit, ...columns.map((_, i) => {
        const of = (i < 2 ? shown : base).of;
        return field.key === "cut" && of.cutsWithRoundOut ? "with the round-out" : of[field.key];
      })]),
      ...about.rows.map((row) => [row.label, row.unit, ...columns.map(([, numbers]) => numbers[row.key] ?? "")])];
    const link = element("a");
    link.href = URL.createObjectURL(new Blob([lines.map((line) => line.map(quoted).join(",")).join("\n") + "\n"], { type: "text/csv" }));
    link.download = "what-if.csv";
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10000);
  };

  // The setting in the address: what is not as at first, in the fields' own units.
  const written = (of) => {
    const start1 = first(), to = new URLSearchParams();
    for (const [key, value] of Object.entries(of))
      if (value !== start1[key] && !(typeof value === "number" && !Number.isFinite(value))) to.set(key, value === true ? "1" : value === false ? "0" : value);
    return to;
  };
  let own = "";
  const keepAddress = () => {
    const to = written(setting);
    if (base) to.set("base", written(base.of));
    if ($("predict").checked) to.set("predict", "1");
    own = "#" + to;
    // A browser that is asked too often says no; the next rest asks again.
    try {
      history.replaceState(null, "", to.toString() ? own : location.pathname + location.search);
    } catch {
      own = location.hash;
    }
  };
  const read = (from, aside) => {
    const made = first();
    const given = new URLSearchParams(from);
    const name = given.get("aeroplane");
    if (name !== null && aeroplanes.has(name)) made.aeroplane = name;
    else if (name !== null) aside.push(`the aeroplane “${name.slice(0, 40)}”: drop its file on this page`);
    const plane = aeroplanes.get(made.aeroplane);
    made.mass = plane.most;
    made.second = plane.flaps.length - 1;
    for (const [key, text] of given) {
      const field = fieldOf.get(key), value = Number(text);
      if (field) {
        if (text.trim() !== "" && value >= field.least && value <= field.most) made[key] = value;
        else aside.push(`${field.label}: “${text.slice(0, 40)}”`);
      } else if (key === "first" || key === "second") {
        if (/^\d+$/.test(text) && value < plane.flaps.length) made[key] = value;
        else aside.push(`the ${key} flaps: “${text.slice(0, 40)}”`);
      } else if (key === "surface") {
        if ([...$("surface").options].some((option) => option.value === text)) made.surface = text;
        else aside.push(`the surface “${text.slice(0, 40)}”`);
      } else if (key === "cutsWithRoundOut") made.cutsWithRoundOut = text !== "0";
      else if (key === "units") made.units = text === "si" ? "si" : "aviation";
      else if (!["aeroplane", "base", "predict"].includes(key)) aside.push(`“${key.slice(0, 40)}”, which is no part of a setting`);
    }
    return made;
  };
  const readAddress = async () => {
    if (location.hash === own || location.hash.length > 1 && !location.hash.includes("=") && $(location.hash.slice(1))) return;
    const aside = [];
    const given = location.hash.slice(1);
    setting = read(given, aside);
    const parts = new URLSearchParams(given);
    $("predict").checked = parts.get("predict") === "1";
    typedWrong.clear();
    putAll();
    const box = find(".put-aside");
    box.hidden = aside.length === 0;
    box.replaceChildren(element("p", `The address holds what this page cannot take, and the page begins without it: ${aside.slice(0, 5).join("; ")}${aside.length > 5 ? ` and ${aside.length - 5} more` : ""}.`));
    shown = null;
    wanted = true;
    await pump();
    if (parts.has("base")) {
      const of = read(parts.get("base"), []);
      const answer = await ask("Land", json(of));
      if (landed(answer)) setBase({ of, answer });
    }
  };

  const setBase = (to) => {
    base = to;
    press("drop").hidden = !to;
    table = null;
    if (shown) {
      drawBoth();
      showTable();
    }
    keepAddress();
  };

  // Predict first: the answer waits until a guess is made.
  const guess = () => {
    const form = find(".guess");
    stale(true);
    if (!form.hidden) return;
    form.replaceChildren(element("p", "You changed the setting. Where will each landing stop now? What is drawn is from before."));
    shown.answer.sides.forEach((side, i) => {
      const label = element("label", `${names(shown.answer)[i]} stopped at ${say(side.numbers.stop, "m")}; now at `);
      const input = element("input");
      input.type = "text";
      input.inputMode = "decimal";
      input.autocomplete = "off";
      input.id = "guess-" + i;
      label.append(input, ` ${unitOf("m")}`);
      const row = element("p");
      row.append(label);
      form.append(row);
    });
    const button = element("button", "Show what the model says");
    const row = element("p", "", "press");
    row.append(button);
    form.append(row);
    form.hidden = false;
  };
  find(".guess").addEventListener("submit", async (event) => {
    event.preventDefault();
    const form = event.target;
    const guesses = [0, 1].map((i) => readText($("guess-" + i).value));
    wanted = true;
    await pump();
    if (isRefused) return;
    form.hidden = true;
    const words = shown.answer.sides.map((side, i) => {
      const guessed = guesses[i] / factor("m"), by = side.numbers.stop - guessed;
      return Number.isFinite(guessed) ? ` ${names(shown.answer)[i]}: predicted ${say(guessed, "m")}, the model says ${say(side.numbers.stop, "m")}, ${say(Math.abs(by), "m")} ${by > 0 ? "further" : "shorter"}.` : "";
    }).join("");
    find(".changed").textContent += words;
    speak();
  });

  // 300 landings, a few at a time, so that the model stays free for a change.
  const BATCH = 6, ALL = 300;
  let drawing = 0;
  const spread = async () => {
    const turn = ++drawing;
    const of = json();
    const sides = [{ touchdown: [], stop: [], refused: 0 }, { touchdown: [], stop: [], refused: 0 }];
    press("cancel").hidden = false;
    find(".drawing").hidden = false;
    let why = "";
    try {
      for (let batch = 1, done = 0; done < ALL && turn === drawing && !why; batch++) {
        const answer = await ask("Spread", of, batch, BATCH);
        if (turn !== drawing) return;
        why = answer.faults?.[0]?.text ?? answer.sides.find((side) => side.refusal)?.refusal ?? "";
        if (why) break;
        answer.sides.forEach((side, i) => {
          sides[i].touchdown.push(...side.touchdown);
          sides[i].stop.push(...side.stop);
          sides[i].refused += side.refused;
        });
        done += BATCH;
        find(".drawing progress").value = done;
        find(".drawing output").textContent = `${done} of ${ALL}`;
        if (done % 60 === 0) drawSpread(sides, of);
      }
    } catch (e) {
      why = `The model failed: ${e.message} Draw again.`;
      end(e.message);
    }
    if (why) find(".spread").replaceChildren(element("p", why));
    press("cancel").hidden = true;
    find(".drawing").hidden = true;
  };
  const drawSpread = (sides, text) => {
    if (!shown) return;
    const of = JSON.parse(text), available = of.length - of.displaced, third = available / 3;
    const place = find(".spread"), wide = Math.max(280, place.clientWidth || 280), size = wide < 500 ? 12 : 14;
    const last = Math.max(available, ...sides.flatMap((side) => side.stop)) * 1.02, X = (along) => 8 + along * (wide - 16) / last;
    const parts = [], tall = 62, bins = Math.max(20, Math.round(wide / 14));
    const plane = aeroplanes.get(of.aeroplane);
    const says = [];
    sides.forEach((side, i) => {
      const same = of.first === of.second, place0 = i === 0 ? of.first : of.second;
      const style = about.styles[same && i === 1 ? 3 : place0 === 0 ? 0 : place0 === plane.flaps.length - 1 ? 1 : 2];
      const floor = 24 + (i + 1) * (tall + 26);
      const count = (values) => {
        const bars = new Array(bins).fill(0);
        for (const value of values) bars[Math.min(bins - 1, Math.max(0, Math.floor(value / last * bins)))]++;
        return bars;
      };
      const touch = count(side.touchdown), stop = count(side.stop), most = Math.max(...touch, ...stop, 1);
      const bars = (list, filled) => parts.push(draw("path", { fill: filled ? style.line : "#fff", stroke: style.line, "stroke-width": 1.5, d: list.map((many, b) => many ? `M${n(X(b * last / bins))} ${floor}v${n(-many / most * tall)}H${n(X((b + 1) * last / bins))}V${floor}Z` : "").join("") }));
      bars(stop, false);
      bars(touch, true);
      parts.push(draw("path", { stroke: "#000", d: `M${n(X(0))} ${floor}H${n(X(available))}` }));
      const name = `Flaps ${plane.flaps[place0]}`;
      const within = side.touchdown.filter((value) => value <= third).length, stops = side.stop.filter((value) => value <= available).length, drawn = side.stop.length + side.refused;
      parts.push(draw("text", { x: 4, y: floor + size + 4, fill: style.text, "font-weight": 700 }, `${name}: filled where the wheels touch, open where it stops`));
      says.push(`${name}: of ${drawn} landings ${within} touch within the first third and ${stops} stop on the runway${side.refused ? `; ${side.refused} cannot happen` : ""}.`);
    });
    for (const [along, text1] of [[third, "first third"], [available, "end"]]) {
      parts.push(draw("path", { stroke: "#000", "stroke-width": 2, "stroke-dasharray": "3,3", d: `M${n(X(along))} 20V${24 + 2 * (tall + 26)}` }));
      parts.push(draw("text", { x: n(X(along)), y: 14, "text-anchor": along === available ? "end" : "middle" }, text1));
    }
    const svg = draw("svg", { viewBox: `0 0 ${wide} ${24 + 2 * (tall + 26) + size + 10}`, "font-size": size, "font-family": "Inter, system-ui, sans-serif" });
    svg.append(...parts);
    const figure = element("figure"), drawn = element("div", "", "plot-drawing");
    drawn.setAttribute("role", "img");
    drawn.setAttribute("aria-label", says.join(" "));
    drawn.append(svg);
    figure.append(drawn, element("figcaption", says.join(" ") + " The setting is the one from when the drawing began."));
    place.replaceChildren(figure);
  };

  // A file of an aeroplane.
  const take = async (file) => {
    const box = find(".put-aside");
    const refuse = (lines) => {
      box.hidden = false;
      box.replaceChildren(element("p", `“${file.name}” makes no aeroplane; the one before stays.`), ...lines.map((text) => element("p", text)));
    };
    if (file.size > 1048576) return refuse(["The file is larger than 1 MiB; an aeroplane's file is some kilobytes."]);
    const text = await file.text();
    let answer;
    try {
      answer = await ask("Take", file.name, text);
    } catch (e) {
      return refuse([e.message]);
    }
    if (answer.faults) return refuse(answer.faults.map((fault) => fault.text));
    box.hidden = true;
    taken.set(answer.name, { name: file.name, text });
    aeroplanes.set(answer.name, answer);
    choose(answer.name);
  };
  const choose = (name) => {
    const plane = aeroplanes.get(name), was = setting;
    setting = { ...setting, aeroplane: name, first: Math.min(was.first, plane.flaps.length - 1) };
    setting.second = was.second === (aeroplanes.get(was.aeroplane)?.flaps.length ?? 0) - 1 ? plane.flaps.length - 1 : Math.min(was.second, plane.flaps.length - 1);
    // A mass that the other aeroplane does not have becomes its highest; the words of what changed say so.
    if (!(setting.mass >= plane.least && setting.mass <= plane.most)) setting.mass = plane.most;
    putAll();
    change("aeroplane");
  };

  // Listening.
  for (const key of [...fieldOf.keys(), "aim"]) {
    const field = about1(key);
    const take1 = (value) => {
      if (key === "aim") setting.height = value * Math.tan(setting.path * Math.PI / 180) / 0.3048;
      else setting[key] = value;
      if (key === "aim") put("height");
      change(key);
    };
    $(key + "-slider").addEventListener("input", (event) => {
      typedWrong.delete(key);
      take1(Number(event.target.value));
      put(key);
    });
    $(key).addEventListener("input", (event) => {
      const value = readText(event.target.value) / factor(field.unit);
      if (Number.isFinite(value)) {
        typedWrong.delete(key);
        take1(value);
        put(key, false);
      } else {
        typedWrong.set(key, `${field.label}: “${event.target.value}” is no number; write it with digits, for example ${inField(valueOf(key) || 0, field.unit)}.`);
        change(key);
      }
    });
    $(key).addEventListener("blur", () => { if (!typedWrong.has(key) && !$(key).closest("[data-wrong]")) put(key); });
  }
  for (const key of ["surface", "first", "second"]) $(key).addEventListener("change", () => {
    setting[key] = key === "surface" ? $(key).value : Number($(key).value);
    change(key);
  });
  $("aeroplane").addEventListener("change", () => choose($("aeroplane").value));
  $("cutsWithRoundOut").addEventListener("change", () => {
    setting.cutsWithRoundOut = $("cutsWithRoundOut").checked;
    putAll();
    change("cutsWithRoundOut");
  });
  $("units").addEventListener("change", () => {
    setting.units = $("units").value;
    putAll();
    wanted = true;
    pump();
  });
  $("predict").addEventListener("change", () => {
    find(".guess").hidden = true;
    if (!$("predict").checked) pump();
    keepAddress();
  });
  $("file").addEventListener("change", () => {
    if ($("file").files[0]) take($("file").files[0]);
    $("file").value = "";
  });
  addEventListener("dragover", (event) => {
    event.preventDefault();
    document.body.classList.add("is-over");
  });
  addEventListener("dragleave", () => document.body.classList.remove("is-over"));
  addEventListener("drop", (event) => {
    event.preventDefault();
    document.body.classList.remove("is-over");
    if (event.dataTransfer?.files[0]) take(event.dataTransfer.files[0]);
  });
  press("base").addEventListener("click", () => shown && setBase(shown));
  press("drop").addEventListener("click", () => setBase(null));
  press("usual").addEventListener("click", () => {
    const { units } = setting;
    setting = { ...first(), units };
    typedWrong.clear();
    find(".put-aside").hidden = true;
    putAll();
    change("");
  });
  press("csv").addEventListener("click", csv);
  press("print").addEventListener("click", () => print());
  press("spread").addEventListener("click", spread);
  press("cancel").addEventListener("click", () => {
    drawing++;
    press("cancel").hidden = true;
    find(".drawing").hidden = true;
  });
  let width = 0;
  addEventListener("resize", () => {
    if (!shown || width === innerWidth) return;
    width = innerWidth;
    drawBoth();
  });
  addEventListener("hashchange", readAddress);

  for (const { name } of about.pictures) {
    const place = element("div", "", "picture-place");
    place.id = "picture-" + name;
    find(".pictures").append(place);
  }
  own = null;
  putAll();
  readAddress();
})();
