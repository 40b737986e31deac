// Before the first paint: say that JavaScript is there, so that what needs it is shown.
document.documentElement.classList.remove("no-js");
