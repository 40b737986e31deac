// A stream of the desk, heard while its page is looked at: a browser has six connections for all pages of one desk, so a page that
// is not looked at keeps none, and hears what it missed as soon as it is.

/**
 * @param {() => string} address where the stream is, asked anew each time it is opened.
 * @param {Object<string, (event: Event) => void>} heard what to do at each event, those of the connection itself (open, error) too.
 * @returns {() => void} what opens the stream anew.
 */
export function listening(address, heard) {
  let source = null;
  function close() {
    source?.close();
    source = null;
  }
  function listen() {
    close();
    if (document.hidden) return;
    source = new EventSource(address());
    for (const [name, hear] of Object.entries(heard)) source.addEventListener(name, hear);
  }
  document.addEventListener("visibilitychange", listen);
  addEventListener("pagehide", close);
  addEventListener("pageshow", ({ persisted }) => persisted && listen()); // come back to by the browser's button
  listen();
  return listen;
}
