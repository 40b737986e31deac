// Picking a place: a tap, the cross in the middle of the map (for keyboards and for precision), or the phone.

import { text } from "./words.js";

const htmx = window.htmx;
const L = window.L;
const UNMOVED = 0.3; // metres: as exactly as a place is tapped

export class Picker {
  constructor(map) {
    this.map = map;
    this.state = null;
    this.role = null;
    this.phoneAt = null; // where the phone said it is, with its accuracy
    this.circle = null;
    this.bounds = null; // of the course, once it is drawn
    this.tools = document.getElementById("map-tools");
    this.words = document.getElementById("pick-words");
    this.cross = document.getElementById("cross");
    this.phone = document.getElementById("at-phone");
    this.cancel = document.getElementById("pick-cancel");
    // Whoever moves the map by keyboard or finger aims with the cross.
    map.on("dragstart keydown", () => (this.cross.hidden = this.role === null));
    map.on("click", (event) => this.picked(event.latlng));
    document.getElementById("at-cross").addEventListener("click", () => this.atCross());
    this.cancel.addEventListener("click", () => this.start(null));
    this.phone.addEventListener("click", () => this.fromPhone());
    this.placing(false);
  }

  // The course is drawn: from now on the cross stands on a place.
  ready(bounds) {
    this.bounds = bounds;
    this.placing(true);
  }

  placing(may) {
    for (const tool of [document.getElementById("at-cross"), this.phone]) tool.disabled = !may;
  }

  offer(state) {
    this.state = state;
    this.phoneAt = null;
    this.circle?.remove();
    this.start(state.pick);
  }

  start(role) {
    this.role = role && this.state.picks[role] ? role : null;
    const on = this.role !== null;
    const placed = this.state.marks.some((mark) => mark.role === this.role);
    this.tools.hidden = !on;
    this.cross.hidden = !on || this.state.overview || placed;
    document.getElementById("at-cross").hidden = on && this.state.overview;
    document.getElementById("map").classList.toggle("picking", on);
    if (!on) return;
    this.words.textContent = placed ? text("tap_again") : text("tap", { place: this.state.picks[this.role].words });
    this.cancel.hidden = this.state.pick === this.role;
    this.phone.hidden = !("geolocation" in navigator && window.isSecureContext);
    if (this.state.pick !== this.role) {
      document.getElementById("map").scrollIntoView({ block: "nearest" });
      document.getElementById("map").focus();
    }
  }

  // Left where the phone put it, the cross is only as good as the phone; moved onto what is drawn, it is a tap.
  atCross() {
    const centre = this.map.getCenter();
    if (this.phoneAt && this.map.distance(centre, this.phoneAt.at) <= UNMOVED) {
      this.picked(L.latLng(this.phoneAt.at), this.phoneAt.accuracy);
    } else this.picked(centre);
  }

  picked(place, accuracy = null) {
    if (this.role === null) return;
    const uncertainty = accuracy === null ? "" : `;u=${accuracy}`;
    const at = `${place.lat.toFixed(7)},${place.lng.toFixed(7)}${uncertainty}`;
    go(this.state.picks[this.role].url.replace("{at}", at));
  }

  fromPhone() {
    this.words.textContent = text("asking");
    navigator.geolocation.getCurrentPosition(
      (found) => {
        const { latitude: lat, longitude: lng, accuracy } = found.coords;
        if (!this.bounds.pad(0.2).contains([lat, lng])) {
          this.words.textContent = text("elsewhere");
          return;
        }
        this.phoneAt = { at: [lat, lng], accuracy: Math.ceil(accuracy * 10) / 10 };
        this.circle?.remove();
        this.circle = L.circle([lat, lng], { radius: accuracy, interactive: false, className: "accuracy" }).addTo(this.map);
        this.map.setView([lat, lng], 19.5, { animate: false });
        this.cross.hidden = document.getElementById("at-cross").hidden = false;
        this.words.textContent = text("here", { metres: Math.round(accuracy) });
      },
      (error) => {
        this.words.textContent = text("no_position", { fault: error.message });
      },
      { enableHighAccuracy: true, timeout: 15000, maximumAge: 5000 },
    );
  }
}

// Follow an address as a link inside the panel would be followed.
function go(address) {
  const link = document.createElement("a");
  link.href = address;
  link.hidden = true;
  document.getElementById("panel").append(link);
  htmx.process(link);
  link.click();
}
