// Before the first paint: say that JavaScript is there, so that what needs it is shown.
document.documentElement.classList.remove("no-js");

// Back and forward always fetch the page of their address, even before the other scripts have loaded.
window.addEventListener("popstate", (event) => {
  if (event.state?.htmx) window.location.reload();
});
