// Before the first paint: say that JavaScript is there, so that what needs it is shown.
document.documentElement.classList.remove("no-js");

// The desk's own type is set at once where the phone has it already, or where no map waits for its share of the network.
(() => {
  const KEPT = "type kept";
  const root = document.documentElement;
  const map = document.querySelector("link[rel=preload]");
  let kept = false;
  try {
    kept = localStorage.getItem(KEPT) !== null;
  } catch {
    // a browser that keeps nothing fetches it each time
  }
  if (kept || !map) root.classList.add("own-type");
  window.addEventListener("load", async () => {
    root.classList.add("own-type");
    await document.fonts.load("1rem 'Atkinson Hyperlegible Next'");
    try {
      localStorage.setItem(KEPT, "yes");
    } catch {
      // as above
    }
  });
})();

// Back and forward always fetch the page of their address, even before the other scripts have loaded.
window.addEventListener("popstate", (event) => {
  if (event.state?.htmx) window.location.reload();
});
