// All sheets of a round take some seconds: the page says so, hands the file over, and says that it is there.

for (const form of document.querySelectorAll("form[data-done]"))
  form.addEventListener("submit", async (event) => {
    const { submitter } = event;
    event.preventDefault();
    if (form.getAttribute("aria-busy") === "true") return;
    const status = form.querySelector("[role=status]");
    form.setAttribute("aria-busy", "true");
    status.textContent = form.dataset.busy;
    const address = `${form.action}?${new URLSearchParams(new FormData(form, submitter))}`;
    try {
      const answer = await fetch(address);
      if (!answer.ok || answer.redirected) throw new Error(answer.statusText);
      const file = Object.assign(document.createElement("a"), {
        href: URL.createObjectURL(await answer.blob()),
        download: form.dataset.name,
      });
      file.click();
      setTimeout(() => URL.revokeObjectURL(file.href), 60_000);
      status.textContent = form.dataset.done;
    } catch {
      location.assign(address); // the page there says what is wrong
    } finally {
      form.removeAttribute("aria-busy");
    }
  });
