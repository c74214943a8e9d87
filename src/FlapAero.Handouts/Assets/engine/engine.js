"use strict";
// The engine that computes for the page beside it: a worker, started from the scripts that the page's questions need, when the
// first question is asked. Each question has a number, so that an answer finds who asked.
window.flapaeroEngineFrom = (parts, afterStart = async () => {}) => {
  const come = new Set();
  const waiting = new Map();
  let asked = 0;
  let worker = null;
  let starting = null;

  const bring = (name) => new Promise((come, fail) => {
    const script = document.createElement("script");
    script.src = name;
    script.onload = come;
    script.onerror = () => fail(new Error(`The file ${name} is not beside this page: copy the whole folder "engine", or make it anew with "handouts --engine".`));
    document.head.append(script);
  });

  const post = (question) => new Promise((answer, fail) => {
    const id = ++asked;
    waiting.set(id, { answer, fail });
    worker.postMessage({ ...question, id });
  });

  // Whoever waits is told why, and so is a start that is not over yet.
  const end = (words) => {
    worker?.terminate();
    worker = null;
    starting?.stop(new Error(words));
    starting = null;
    for (const { fail } of waiting.values()) fail(new Error(words));
    waiting.clear();
  };

  const hear = ({ data: { id, reply, broken } }) => {
    const one = waiting.get(id);
    waiting.delete(id);
    if (broken) one?.fail(new Error(broken));
    else one?.answer(reply);
  };

  const start = async (isWanted) => {
    if (typeof DecompressionStream === "undefined") throw new Error("This browser is from before 2023 and cannot unpack the engine; any newer one can.");
    for (const part of parts) {
      if (!come.has(part)) await bring(part);
      come.add(part);
    }
    if (!isWanted()) return;
    const { packed, referred, worker: script } = window.flapaeroEngine;
    const address = URL.createObjectURL(new Blob([script], { type: "text/javascript" }));
    worker = new Worker(address);
    URL.revokeObjectURL(address);
    worker.onmessage = hear;
    worker.onerror = (event) => end(event.message || "The engine did not start.");
    await post({ packed, referred });
    await afterStart(post);
  };

  const begin = () => {
    if (starting) return starting.done;
    const mine = starting = {};
    mine.done = new Promise((ready, fail) => {
      mine.stop = fail;
      start(() => starting === mine).then(ready, (e) => {
        if (starting === mine) end(e.message);
        fail(e);
      });
    });
    return mine.done;
  };

  // On a web space the folder is kept once it was of use, for pages without a network; a reader who saves data fetches nothing more.
  let isKept = false;
  const keepFolder = () => {
    if (isKept || !/^https?:$/.test(location.protocol) || navigator.connection?.saveData) return;
    isKept = true;
    navigator.serviceWorker?.register("keep.js").catch(() => {});
  };

  return {
    begin,
    keepFolder,
    ask: async (call, ...given) => {
      await begin();
      return post({ call, given });
    },
    end,
  };
};
