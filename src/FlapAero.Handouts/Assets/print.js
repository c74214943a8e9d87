// Run in the browser on a page whose own scripts do not run, before it is printed.
async () => {
  // Chromium leaves a whole picture out of the tags where its drawing is hidden from readers, and its description with it.
  for (const drawing of document.querySelectorAll('[role=img] [aria-hidden]')) drawing.removeAttribute('aria-hidden');
  // MathML has no alternative text in a PDF of Chromium's; a picture round it has.
  for (const formula of document.querySelectorAll('math[alttext]')) {
    let frame = formula.parentElement;
    if (frame.childElementCount !== 1 || frame.textContent.trim() !== formula.textContent.trim()) {
      frame = document.createElement('span');
      formula.replaceWith(frame);
      frame.append(formula);
    }
    frame.setAttribute('role', 'img');
    frame.setAttribute('aria-label', formula.getAttribute('alttext'));
  }
  // The page's own rules may add to it; the numbers are there in any case.
  const style = document.createElement('style');
  style.textContent = '@page{@bottom-right{content:"page " counter(page) " of " counter(pages);font:8.5pt sans-serif;color:#000}}';
  document.head.append(style);
  // A face that is still being read prints as another one.
  await Promise.all([...document.fonts].map((face) => face.load()));
}
