// Picking a place: a tap, the cross in the middle of the map (for keyboards and for precision), or the phone.

import { wasMeant } from "./taps.js";
import { text } from "./words.js";

const L = window.L;
const UNMOVED = 0.3; // metres: as exactly as a place is tapped
const TWICE = 300; // ms within which a second tap makes a double tap, which zooms the whole course (own choice)
const FINGER = 24; // pixels around the number of a hole that choose the hole: 48 across (WCAG 2.2, 2.5.5)

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
    this.ring = null; // where a tap was taken, until the page it leads to is there
    this.once = 0; // waits for the second tap of a double tap
    map.on("click", (event) => this.tapped(event));
    document.getElementById("at-cross").addEventListener("click", (event) => this.atCross(event.detail > 0));
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
    this.ring?.remove();
    this.start(state.pick);
  }

  start(role) {
    this.role = role && this.state.picks[role] ? role : null;
    const on = this.role !== null;
    this.map.doubleClickZoom[on ? "disable" : "enable"]();
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
  atCross(byHand) {
    const centre = this.map.getCenter();
    if (this.phoneAt && this.map.distance(centre, this.phoneAt.at) <= UNMOVED) {
      this.picked(L.latLng(this.phoneAt.at), this.phoneAt.accuracy, byHand);
    } else this.picked(centre, null, byHand);
  }

  // A tap is shown at once. On the whole course the number of a hole chooses the hole, and a double tap zooms; where one
  // hole is shown a tap places the ball, and the second tap of a shaking hand is not taken.
  tapped({ latlng, containerPoint, originalEvent }) {
    if (this.role === null || !wasMeant()) return;
    if (!this.state.overview) {
      this.picked(latlng);
      return;
    }
    if (this.once) {
      clearTimeout(this.once);
      this.once = 0;
      this.ring?.remove();
      this.map.setZoomAround(latlng, this.map.getZoom() + (originalEvent?.shiftKey ? -1 : 1));
      return;
    }
    this.mark(latlng);
    const hole = this.holeAt(containerPoint);
    this.once = setTimeout(() => {
      this.once = 0;
      if (hole) follow(hole);
      else this.picked(latlng);
    }, TWICE);
  }

  // The link in the list of holes for the number that a tap meant: where numbers stand close together, the nearest.
  holeAt(point) {
    const frame = this.map.getContainer().getBoundingClientRect();
    let [nearest, meant] = [FINGER, null];
    for (const number of document.querySelectorAll("#map .hole-number")) {
      const box = number.getBoundingClientRect();
      const [x, y] = [(box.left + box.right) / 2 - frame.left, (box.top + box.bottom) / 2 - frame.top];
      const far = Math.hypot(point.x - x, point.y - y);
      if (far <= nearest) [nearest, meant] = [far, number.textContent.trim()];
    }
    return meant && document.querySelector(`a.hole[data-hole="${meant}"]`);
  }

  mark(place) {
    this.ring?.remove();
    this.ring = L.circleMarker(place, { radius: 18, interactive: false, className: "tapped" }).addTo(this.map);
  }

  picked(place, accuracy = null, byHand = true) {
    if (this.role === null) return;
    this.mark(place);
    const uncertainty = accuracy === null ? "" : `;u=${accuracy}`;
    const at = `${place.lat.toFixed(7)},${place.lng.toFixed(7)}${uncertainty}`;
    go(this.state.picks[this.role].url.replace("{at}", at), byHand);
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
function go(address, byHand) {
  const link = document.createElement("a");
  link.href = address;
  link.hidden = true;
  document.getElementById("panel").append(link);
  window.htmx?.process(link); // where it has not arrived yet, the link leads to a page of its own
  follow(link, byHand);
}

// What a hand chose counts as its tap, so that the second tap of a double tap is not taken by the page that comes.
function follow(link, byHand = true) {
  link.dispatchEvent(new MouseEvent("click", { bubbles: true, cancelable: true, detail: Number(byHand) }));
}
