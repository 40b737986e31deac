// Two thin lines over the drawing, where its two sliders meet: seen while a slider is moved by the keyboard.

const drawing = document.querySelector(".with-keys");
const [across, down] = ["across", "down"].map((name) => drawing?.querySelector(`.${name}`));

function line(name) {
  const made = document.createElement("div");
  made.className = `crosshair ${name}`;
  made.hidden = true;
  drawing.append(made);
  return made;
}

if (drawing) {
  const [upright, level] = ["upright", "level"].map(line);
  const show = () => {
    upright.hidden = level.hidden = false;
    upright.style.left = `${across.value}px`;
    level.style.top = `${down.value}px`;
  };
  for (const slider of [across, down]) for (const name of ["input", "focus"]) slider.addEventListener(name, show);
}
