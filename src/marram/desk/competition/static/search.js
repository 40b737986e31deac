// Finding a Local Rule among those that can be adopted: by its code or by any words of it. What is chosen stays in sight.

const field = document.getElementById("local-search");
const found = document.getElementById("local-found");
const areas = [...document.querySelectorAll("details.theme")].map((area) => ({ area, open: area.open }));

field?.addEventListener("input", () => {
  const words = field.value.toLowerCase().split(/\s+/).filter(Boolean);
  let count = 0;
  for (const { area, open } of areas) {
    let here = 0;
    for (const choice of area.querySelectorAll(".choice")) {
      const fits = words.every((word) => `${area.querySelector("summary").textContent} ${choice.textContent}`.toLowerCase().includes(word));
      choice.hidden = !fits && !choice.querySelector("input").checked;
      if (fits) here += 1;
    }
    area.hidden = here === 0;
    area.open = words.length ? here > 0 : open;
    count += here;
  }
  found.textContent = words.length ? found.dataset.words.replace("{count}", count) : "";
});
