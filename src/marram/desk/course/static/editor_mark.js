// Marking an area where one stands: a circle or rectangle around the cross, or corners recorded on a walk round it.

import { circle, rectangle, round } from "./editor_geometry.js";

const find = (id) => document.getElementById(id);
const UNMOVED = 0.3; // metres: the cross still lies where the phone put it
const ROUGH = 3; // metres: a phone that knows its place less well is said to

export class Mark {
  constructor(map, on) {
    this.map = map; // the editor's
    this.on = on;
    this.phone = null; // {at: [latitude, longitude], metres}
    this.watch = null;
    this.following = false;
    this.corners = []; // of a walk: {at: [longitude, latitude], metres}
    map.map.on("move", () => this.show());
    map.map.on("dragstart", () => (this.following = false));
    map.map.getContainer().addEventListener("keydown", () => (this.following = false));
    for (const one of document.querySelectorAll("[name=mark-shape]")) one.addEventListener("change", () => this.shaped());
    for (const one of document.querySelectorAll("[data-step-of]")) one.addEventListener("click", () => this.stepped(one));
    for (const id of ["mark-radius", "mark-length", "mark-width", "mark-turn"]) find(id).addEventListener("input", () => this.changed());
    find("mark-phone").addEventListener("click", () => this.follow());
    find("mark-corner").addEventListener("click", () => this.addCorner());
    find("mark-back").addEventListener("click", () => {
      this.corners.pop();
      this.changed();
    });
  }

  get shape() {
    return document.querySelector("[name=mark-shape]:checked").value;
  }

  start(held) {
    this.map.marking = true;
    this.corners = held?.corners ?? [];
    if (held) {
      document.querySelector(`[name=mark-shape][value=${held.shape}]`).checked = true;
      for (const [id, value] of Object.entries(held.sizes)) find(id).value = value;
      if (held.view) this.map.map.setView(held.view.at, held.view.zoom, { animate: false });
    }
    if (this.map.map.getZoom() < 19) this.map.map.setZoom(19, { animate: false });
    this.shaped();
    if (!held) this.follow();
  }

  stop() {
    this.map.marking = false;
    if (this.watch !== null) navigator.geolocation.clearWatch(this.watch);
    this.watch = this.phone = null;
    this.following = false;
    this.corners = [];
    this.map.preview([]);
    this.on.changed(null);
  }

  // Stay where the map is, though the phone may be elsewhere.
  hold() {
    this.following = false;
  }

  // The phone's position, again and again while one walks.
  follow() {
    if (!("geolocation" in navigator) || !window.isSecureContext) {
      this.on.say("This page has no access to the phone’s position (it needs https). Move the map so that the cross is at the place.");
      return;
    }
    this.following = true;
    if (this.phone) this.map.map.setView(this.phone.at, this.map.map.getZoom(), { animate: false });
    if (this.watch !== null) return this.show();
    this.on.say("Asking the phone …");
    this.watch = navigator.geolocation.watchPosition(
      ({ coords }) => this.located(coords),
      (error) => this.on.say(`The phone gave no position (${error.message}). Move the map so that the cross is at the place.`),
      { enableHighAccuracy: true, timeout: 20000, maximumAge: 2000 },
    );
  }

  located({ latitude, longitude, accuracy }) {
    const at = [latitude, longitude];
    if (!this.map.bounds().pad(0.2).contains(at)) {
      this.on.say("The phone is not on this course. Move the map so that the cross is at the place.");
      this.following = false;
      return;
    }
    this.phone = { at, metres: Math.ceil(accuracy * 10) / 10 };
    if (this.following) this.map.map.setView(at, Math.max(this.map.map.getZoom(), 20), { animate: false });
    this.show();
  }

  shaped() {
    for (const one of document.querySelectorAll("[data-for-shape]")) one.hidden = !one.dataset.forShape.split(" ").includes(this.shape);
    this.changed();
  }

  stepped(button) {
    const field = find(button.dataset.stepOf);
    const value = Number(field.value) + Number(button.dataset.by);
    const [low, high] = [Number(field.min), Number(field.max)];
    field.value = field.id === "mark-turn" ? (value + 180) % 180 : Math.min(high, Math.max(low, value));
    this.changed();
  }

  addCorner() {
    const middle = this.map.map.getCenter();
    this.corners.push({ at: [round(middle.lng), round(middle.lat)], metres: this.fromPhone() });
    this.changed();
  }

  // How well the phone knows the place of the cross; null where the cross was moved onto what is drawn.
  fromPhone() {
    if (!this.phone) return null;
    return this.map.map.distance(this.map.map.getCenter(), this.phone.at) <= UNMOVED ? this.phone.metres : null;
  }

  points() {
    const middle = this.map.map.getCenter();
    const size = (id) => Number(find(id).value);
    if (this.shape === "walk") return this.corners.map((one) => one.at);
    if (this.shape === "circle") return circle(middle, size("mark-radius"));
    return rectangle(middle, size("mark-length"), size("mark-width"), size("mark-turn"));
  }

  // How well the area's place is known, in metres, when the phone gave it; else null.
  accuracy() {
    if (this.shape !== "walk") return this.fromPhone();
    const known = this.corners.map((one) => one.metres).filter((one) => one !== null);
    return known.length ? Math.max(...known) : null;
  }

  changed() {
    this.show();
    const { lat, lng } = this.map.map.getCenter();
    this.on.changed({
      shape: this.shape,
      corners: this.corners,
      sizes: Object.fromEntries(["mark-radius", "mark-length", "mark-width", "mark-turn"].map((id) => [id, find(id).value])),
      view: { at: [lat, lng], zoom: this.map.map.getZoom() },
    });
  }

  show() {
    if (!this.map.marking) return;
    const walk = this.shape === "walk";
    this.map.preview(this.points(), this.phone, walk);
    find("mark-use").disabled = !this.fits();
    find("mark-back").disabled = !this.corners.length;
    const here = this.fromPhone();
    const place = here === null ? "The cross marks the middle. " : `Your phone is here, to about ${here} m. `;
    if (walk) this.on.say(`${here === null ? "" : place}${this.corners.length} corners: go on round the edge, then use the area.`);
    else this.on.say(place + (here !== null && here > ROUGH ? "Move the map to correct it." : ""));
    find("mark-rough").hidden = !((this.accuracy() ?? here ?? 0) > ROUGH);
  }

  fits() {
    if (this.shape === "walk") return this.corners.length >= 3;
    const fields = this.shape === "circle" ? ["mark-radius"] : ["mark-length", "mark-width", "mark-turn"];
    return fields.every((id) => find(id).value !== "" && find(id).checkValidity());
  }
}
