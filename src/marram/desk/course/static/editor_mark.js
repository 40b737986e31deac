// Marking an area where one stands: a circle or rectangle around the cross, or corners recorded on a walk round it.

import { text } from "/static/shell/words.js";
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
      this.on.say(text("no_phone"));
      return;
    }
    this.following = true;
    if (this.phone) this.map.map.setView(this.phone.at, this.map.map.getZoom(), { animate: false });
    if (this.watch !== null) return this.show();
    this.on.say(text("asking"));
    this.watch = navigator.geolocation.watchPosition(
      ({ coords }) => this.located(coords),
      (error) => this.on.say(text("no_position", { fault: error.message })),
      { enableHighAccuracy: true, timeout: 20000, maximumAge: 2000 },
    );
  }

  located({ latitude, longitude, accuracy }) {
    const at = [latitude, longitude];
    if (!this.map.bounds().pad(0.2).contains(at)) {
      this.on.say(text("elsewhere"));
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
    const place = here === null ? text("cross_marks") : text("phone_here", { metres: here });
    if (walk) this.on.say(`${here === null ? "" : `${place} `}${text("walk", { count: this.corners.length })}`);
    else this.on.say(here !== null && here > ROUGH ? `${place} ${text("correct_it")}` : place);
    find("mark-rough").hidden = !((this.accuracy() ?? here ?? 0) > ROUGH);
  }

  fits() {
    if (this.shape === "walk") return this.corners.length >= 3;
    const fields = this.shape === "circle" ? ["mark-radius"] : ["mark-length", "mark-width", "mark-turn"];
    return fields.every((id) => find(id).value !== "" && find(id).checkValidity());
  }
}
