// While the round is drawn, the page says so.

const form = document.querySelector("form[data-busy]");
form?.addEventListener("submit", () => {
  form.setAttribute("aria-busy", "true");
  document.getElementById("busy").textContent = form.dataset.busy;
});
