// The presenter's clock: minutes and seconds since the briefing began, without a script those of when the page was opened.

const clock = document.getElementById("clock");
const begun = Number(clock.dataset.begun);

function tick() {
  const seconds = Math.max(0, Math.floor(Date.now() / 1000) - begun);
  const time = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
  clock.textContent = clock.dataset.words.replace("{time}", time);
}

tick();
setInterval(tick, 1000);
