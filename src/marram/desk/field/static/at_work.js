// While a form of long work is on its way, the page says so: a list is read or taken, lots are cast, a round is drawn.

for (const form of document.querySelectorAll("form[data-busy]"))
  form.addEventListener("submit", ({ submitter }) => {
    form.setAttribute("aria-busy", "true");
    form.querySelector("[role=status]").textContent = submitter?.dataset.busy ?? form.dataset.busy;
  });
