"use strict";
// Checks answers against seals. The words and the order of the questions are those of the library's own checks.
// SHA-256 and PBKDF2 are written out (FIPS 180-4, RFC 8018): a browser lends its own only to pages it trusts, and a page
// may be opened from anywhere.
const answers = (() => {
  const K = [], START = [];
  // The first bits behind the point of the cube and square roots of the first primes.
  for (let n = 2; K.length < 64; n++) {
    let isPrime = true;
    for (let d = 2; d * d <= n; d++) if (n % d === 0) { isPrime = false; break; }
    if (!isPrime) continue;
    const bits = (x) => ((x - Math.floor(x)) * 4294967296) | 0;
    if (START.length < 8) START.push(bits(Math.sqrt(n)));
    K.push(bits(Math.cbrt(n)));
  }
  const W = new Int32Array(64);

  // One step of SHA-256: a state of eight words and a block of sixteen give the next state.
  const compress = (state, block) => {
    for (let i = 0; i < 16; i++) W[i] = block[i];
    for (let i = 16; i < 64; i++) {
      const x = W[i - 15], y = W[i - 2];
      const s0 = ((x >>> 7) | (x << 25)) ^ ((x >>> 18) | (x << 14)) ^ (x >>> 3);
      const s1 = ((y >>> 17) | (y << 15)) ^ ((y >>> 19) | (y << 13)) ^ (y >>> 10);
      W[i] = (W[i - 16] + s0 + W[i - 7] + s1) | 0;
    }
    let [a, b, c, d, e, f, g, h] = state;
    for (let i = 0; i < 64; i++) {
      const s1 = ((e >>> 6) | (e << 26)) ^ ((e >>> 11) | (e << 21)) ^ ((e >>> 25) | (e << 7));
      const t1 = (h + s1 + ((e & f) ^ (~e & g)) + K[i] + W[i]) | 0;
      const s0 = ((a >>> 2) | (a << 30)) ^ ((a >>> 13) | (a << 19)) ^ ((a >>> 22) | (a << 10));
      const t2 = (s0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
      h = g; g = f; f = e; e = (d + t1) | 0; d = c; c = b; b = a; a = (t1 + t2) | 0;
    }
    return [state[0] + a | 0, state[1] + b | 0, state[2] + c | 0, state[3] + d | 0,
      state[4] + e | 0, state[5] + f | 0, state[6] + g | 0, state[7] + h | 0];
  };

  // The last blocks of a message: its bytes, a one, zeros, and the length of all that was hashed.
  const finish = (state, bytes, before) => {
    const size = Math.ceil((bytes.length + 9) / 64) * 64;
    const padded = new Uint8Array(size);
    padded.set(bytes);
    padded[bytes.length] = 0x80;
    const view = new DataView(padded.buffer);
    view.setUint32(size - 4, (before + bytes.length) * 8);
    for (let at = 0; at < size; at += 64) {
      const block = [];
      for (let i = 0; i < 16; i++) block.push(view.getInt32(at + 4 * i));
      state = compress(state, block);
    }
    return state;
  };
  const toBytes = (words) => {
    const bytes = new Uint8Array(4 * words.length);
    const view = new DataView(bytes.buffer);
    words.forEach((word, i) => view.setInt32(4 * i, word));
    return bytes;
  };
  const sha256 = (bytes) => toBytes(finish(START, bytes, 0));

  // PBKDF2 with HMAC-SHA-256, one block: 32 bytes.
  const stretch = (password, salt, rounds) => {
    const pad = (byte) => {
      const block = new Uint8Array(64).fill(byte);
      const key = password.length > 64 ? sha256(password) : password;
      key.forEach((value, i) => { block[i] ^= value; });
      const view = new DataView(block.buffer), words = [];
      for (let i = 0; i < 16; i++) words.push(view.getInt32(4 * i));
      return compress(START, words);
    };
    const inner = pad(0x36), outer = pad(0x5c);
    const tail = [0x80000000 | 0, 0, 0, 0, 0, 0, 0, 96 * 8];
    const first = new Uint8Array(salt.length + 4);
    first.set(salt);
    first[salt.length + 3] = 1;
    let u = compress(outer, finish(inner, first, 64).concat(tail));
    const out = u.slice();
    for (let round = 1; round < rounds; round++) {
      u = compress(outer, compress(inner, u.concat(tail)).concat(tail));
      for (let i = 0; i < 8; i++) out[i] ^= u[i];
    }
    return toBytes(out);
  };

  const ascii = (text) => Uint8Array.from(text, (c) => c.charCodeAt(0));
  const fromHex = (hex) => Uint8Array.from(hex.match(/../g) || [], (pair) => parseInt(pair, 16));
  const hex = (bytes) => Array.from(bytes, (b) => b.toString(16).padStart(2, "0")).join("");
  const read = (seal) => JSON.parse(utf8(Uint8Array.from(atob(seal), (c) => c.charCodeAt(0))));
  const utf8 = (bytes) => decodeURIComponent(Array.from(bytes, (b) => "%" + b.toString(16).padStart(2, "0")).join(""));

  // Half of a hash tells whether a guess is right, the other half opens the words that belong to it.
  const hash = (guess, seal) => {
    const key = stretch(ascii(guess), fromHex(seal.salt), seal.rounds);
    const open = (words) => {
      const bytes = fromHex(words);
      for (let at = 0, count = 0; at < bytes.length; at += 32, count++) {
        const pad = sha256(Uint8Array.from([...key.slice(16), count]));
        for (let i = at; i < Math.min(bytes.length, at + 32); i++) bytes[i] ^= pad[i - at];
      }
      return utf8(bytes);
    };
    return { tag: hex(key.slice(0, 16)), open };
  };

  // The pieces of the library's NumberSeal, and what stands in them: two ends of 24 letters each, then words.
  const SLACK = 1e-6, NUMBER = 24;
  const piece = (value, tolerance) => String(Math.floor(value / (2 * tolerance * (1 + SLACK))) + 0);
  const find = (seal, name, pieces, value) => {
    const guess = hash(name + ":" + piece(value, seal.tolerance), seal);
    const found = pieces.find((one) => one.tag === guess.tag);
    if (!found) return null;
    const text = guess.open(found.words);
    return value >= Number(text.slice(0, NUMBER)) && value <= Number(text.slice(NUMBER, 2 * NUMBER)) ? text.slice(2 * NUMBER) : null;
  };
  const isRight = (seal, value) => find(seal, "right", seal.right, value) !== null;

  const MINUS = /[\u2212\u2013\u2010\u2011]/g;

  // What was typed: a number, read in each way that its comma allows, and perhaps a unit.
  const parse = (text, seal) => {
    const plain = text.replace(MINUS, "-").replace(/[\u00a0\u202f\s]+/g, " ").trim();
    if (plain === "") return { empty: true };
    const match = /^([+-]? ?(?:\d[\d .,]*|[.,]\d+)) ?([^\d]*)$/.exec(plain);
    let digits = match ? match[1].trim().replace(/^([+-]) /, "$1") : "";
    if (/^[+-]?\d{1,3}( \d{3})+([.,]\d*)?$/.test(digits)) digits = digits.replace(/ /g, "");
    const readings = [];
    if (/^[+-]?\d*[.,]?\d+$|^[+-]?\d+[.,]$/.test(digits)) readings.push(parseFloat(digits.replace(",", ".")));
    if (/^[+-]?\d{1,3}(,\d{3})+(\.\d+)?$/.test(digits)) readings.push(parseFloat(digits.replace(/,/g, "")));
    if (readings.length === 0 || !readings.every(Number.isFinite)) return { faulty: true };
    const written = match[2].trim().replace(/\.$/, "").toLowerCase();
    const unit = written === "" ? seal.units[0] : seal.units.find((u) =>
      [u.sign, u.words, ...u.also].some((spelling) => spelling !== "" && spelling.toLowerCase() === written));
    return { readings, unit, written, shown: plain };
  };

  const example = (seal) => (1.5).toFixed(Math.max(1, seal.decimals));

  // The verdict on a number: [outcome, words].
  const checkNumber = (seal, text) => {
    const typed = parse(text, seal);
    const wanted = seal.units[0];
    if (typed.empty) return ["open", "Write your answer first, then check it."];
    if (typed.faulty) return ["open", `“${text.trim()}” is not a number that can be read: write one such as ${example(seal)}${wanted.sign ? " " + wanted.sign : ""}.`];
    if (!typed.unit) return ["open", wanted.sign
      ? `“${typed.written}” is no unit that fits here: the answer wants ${wanted.words} (${wanted.sign}).`
      : `The answer is a number without a unit; “${typed.written}” does not belong to it.`];
    let last = null;
    for (const number of typed.readings) {
      last = judge(seal, number, typed);
      if (last.isKnown) break;
    }
    return last.verdict;
  };

  const judge = (seal, number, typed) => {
    const wanted = seal.units[0], unit = typed.unit;
    const value = number * unit.factor + unit.offset;
    const gap = (sign) => (sign === "" || sign === "°" ? "" : "\u00a0") + sign;
    const answer = typed.written === "" ? typed.shown + gap(wanted.sign) : typed.shown;
    const wrong = (words) => ({ isKnown: true, verdict: ["wrong", words] });
    if (value === 0) return { isKnown: true, verdict: ["open", "Zero is not an answer here: write a number other than zero."] };
    if (isRight(seal, value))
      return { isKnown: true, verdict: ["passed", `${answer} is right, within ${Number(seal.tolerance.toFixed(seal.decimals + 1))}${gap(wanted.sign)}.`] };
    for (let i = 0; i < seal.known.length; i++) {
      const words = find(seal, i, seal.known[i], value);
      if (words !== null) return wrong(`${answer} is not right. ${words}`);
    }
    if (isRight(seal, -value)) return wrong(`${answer} has the right size but the wrong sign.`);
    for (const other of seal.units) {
      if (other === unit || !isRight(seal, number * other.factor + other.offset)) continue;
      return wrong(unit === wanted
        ? `${answer} is not right. That would be right in ${other.words}; the answer wants ${wanted.words}.`
        : `${answer} is not right. The number would be right in ${other.words}, but it was given in ${unit.words}.`);
    }
    if (isRight(seal, value / 2)) return wrong(`${answer} is twice what it should be: look for a factor of two.`);
    if (isRight(seal, 2 * value)) return wrong(`${answer} is half of what it should be: look for a factor of two.`);
    if (isRight(seal, value / 10)) return wrong(`${answer} is ten times what it should be: look at the decimal point.`);
    if (isRight(seal, 10 * value)) return wrong(`${answer} is a tenth of what it should be: look at the decimal point.`);
    if (isRight(seal, value - 2 * seal.tolerance) || isRight(seal, value + 2 * seal.tolerance))
      return wrong(`${answer} is close, but not close enough: look for a value that was rounded early.`);
    return { isKnown: false, verdict: ["wrong", `${answer} is not right: work it again.`] };
  };

  const checkChoice = (seal, letter) => {
    if (!letter) return ["open", "Choose an option first, then check it."];
    const verdict = hash("option:" + letter, seal).open(seal.verdicts[letter.charCodeAt(0) - 97]).trim();
    const because = verdict.slice(1);
    if (verdict[0] === "+") return ["passed", `${letter} is right. ${because}`];
    if (verdict[0] === "=") return ["passed", `${letter} is safe and accepted; it is more than the rule asks. ${because}`];
    return ["wrong", `${letter} is not right. ${because}`];
  };

  const check = (form) => {
    const seal = read(form.dataset.seal);
    if (form.dataset.kind === "choice") {
      const chosen = form.querySelector("input:checked");
      return checkChoice(seal, chosen && chosen.value);
    }
    return checkNumber(seal, form.querySelector("input").value);
  };

  const PATIENCE = 3;

  const wire = (form) => {
    const verdict = form.querySelector(".verdict");
    const hints = form.closest(".cell")?.getElementsByClassName("hint") ?? [];
    const offer = document.createElement("button");
    offer.type = "button";
    offer.textContent = "Open a hint";
    let misses = 0;
    const nextHint = () => [...hints].find((hint) => !hint.open);
    offer.addEventListener("click", () => {
      const hint = nextHint();
      offer.remove();
      hint.open = true;
      hint.querySelector("summary").focus();
    });
    form.querySelector("button").hidden = false;
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      const [outcome, words] = check(form);
      form.dataset.outcome = outcome;
      // Emptied first, so that the same words are read out again.
      verdict.textContent = "";
      misses = outcome === "wrong" ? misses + 1 : outcome === "passed" ? 0 : misses;
      const isStuck = misses >= PATIENCE && nextHint();
      requestAnimationFrame(() => {
        verdict.textContent = isStuck ? words + " A hint may help." : words;
        if (isStuck) verdict.after(offer);
        else offer.remove();
      });
    });
    form.addEventListener("input", () => { delete form.dataset.outcome; verdict.textContent = ""; });
  };
  if (typeof document !== "undefined") for (const form of document.querySelectorAll("form.try")) wire(form);

  return { checkNumber, checkChoice, read, sha256, stretch, parse, hex, ascii };
})();
