"use strict";
// Runs the cells, away from the page: a cell that never ends is stopped by ending this worker. It asks nobody for anything: all
// files come in the first message.
// Else the runtime takes this for a helper of its own that waits for orders.
self.dotnetSidecar = true;
const names = new Map();
let doors;

// 15 bits a letter; the first letter says how many bytes too many they make.
const ZERO = 0x3400;
const bytesOf = (text) => {
  const bytes = new Uint8Array(Math.floor((text.length - 1) * 15 / 8) - (text.charCodeAt(0) - ZERO));
  let held = 0, count = 0, at = 0;
  for (let i = 1; i < text.length; i++) {
    held = held << 15 | text.charCodeAt(i) - ZERO;
    for (count += 15; count >= 8 && at < bytes.length; at++) bytes[at] = held >> (count -= 8);
    held &= (1 << count) - 1;
  }
  return bytes;
};

const unpack = async (packed) => {
  const bytes = bytesOf(packed);
  return new Uint8Array(await new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"))).arrayBuffer());
};

// The runtime's scripts ask where they lie: nowhere that could be asked for anything.
const addressOf = (bytes) => {
  const text = new TextDecoder().decode(bytes).replaceAll("import.meta.url", "\"https://engine.invalid/dotnet.js\"");
  return URL.createObjectURL(new Blob([text], { type: "text/javascript" }));
};

// A page that brings a part of the engine starts with that part.
const started = (bytes) => new TextDecoder().decode(bytes).replace(/\/\*json-start\*\/([^]*)\/\*json-end\*\//, (_, text) => {
  const config = JSON.parse(text);
  for (const [kind, list] of Object.entries(config.resources))
    if (Array.isArray(list)) config.resources[kind] = list.filter((file) => names.has(file.name));
  return JSON.stringify(config);
});

const start = async (packed, referred) => {
  await Promise.all(Object.entries(packed).map(async ([name, text]) => names.set(name, await unpack(text))));
  const { dotnet } = await import(addressOf(new TextEncoder().encode(started(names.get("dotnet.js")))));
  const runtime = await dotnet.withResourceLoader((type, name) => type === "dotnetjs" ? addressOf(names.get(name))
    : Promise.resolve(new Response(names.get(name), { headers: { "Content-Type": type === "dotnetwasm" ? "application/wasm" : "application/octet-stream" } })))
    .create();
  const { Program, WhatIfDoor } = (await runtime.getAssemblyExports(runtime.getConfig().mainAssemblyName)).FlapAero.Explorer;
  doors = { ...Program, ...WhatIfDoor };
  for (const name of referred) doors.Refer(names.get(name));
  if (names.has("docs.json")) doors.Learn(names.get("docs.json"));
  names.clear();
};

onmessage = async ({ data: { id, packed, referred, call, given } }) => {
  try {
    if (packed) await start(packed, referred);
    postMessage({ id, reply: packed ? null : JSON.parse(await doors[call](...given)) });
  } catch (e) {
    postMessage({ id, broken: String(e && e.message || e) });
  }
};
