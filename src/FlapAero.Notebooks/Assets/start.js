// Once a notebook: says why figures stay still in a browser that cannot unpack what draws them.
if (typeof DecompressionStream === "undefined") setTimeout(() => {
  for (const line of document.querySelectorAll(".lesson-ready"))
    line.append(" This browser, from before 2023, shows figures as still pictures; any newer one shows them live.");
});
