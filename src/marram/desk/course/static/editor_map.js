// The map of the editor: areas to choose, corners to drag, and the sketch of a new area.

import { text } from "/static/shell/words.js";
import { round } from "./editor_geometry.js";
import { cornersOf, moved, rings, shownCorners, withCorner, withNewCorner } from "./editor_shape.js";

const L = window.L;
const TARGET = 44; // pixels a finger needs
const APART = 30; // pixels between corners shown; zooming in shows the others
const SHAPED = 120; // pixels across that an area needs to be shaped with a finger
const ROOM_BETWEEN = 96; // pixels of an edge that has room for a dot in its middle

export class EditorMap {
  constructor(on) {
    this.on = on;
    this.map = L.map("editor-map", { attributionControl: false, zoomControl: false, zoomSnap: 0.1, zoomDelta: 0.75, minZoom: 13, maxZoom: 24 });
    L.control.zoom({ position: "bottomright", zoomInTitle: text("zoom_in"), zoomOutTitle: text("zoom_out") }).addTo(this.map);
    L.control.scale({ position: "bottomleft", imperial: false, maxWidth: 120 }).addTo(this.map);
    this.ground = L.layerGroup().addTo(this.map);
    this.theirs = L.layerGroup().addTo(this.map);
    this.handles = L.layerGroup().addTo(this.map);
    this.sketch = L.layerGroup().addTo(this.map);
    this.crossing = L.layerGroup().addTo(this.map);
    this.layers = new Map();
    this.points = null; // of the sketch; null when nothing is being drawn
    this.marking = false; // a shape follows the cross in the middle of the map
    this.chosen = null;
    this.corner = null;
    this.map.on("click", (event) => {
      if (this.points) this.addPoint(event.latlng);
      else if (!this.marking) this.on.choose(null);
    });
    this.map.on("zoomend", () => this.showHandles());
    new ResizeObserver(() => this.map.invalidateSize({ animate: false })).observe(this.map.getContainer());
    window.marramMap = this.map; // for whoever looks from outside, such as the tests
  }

  draw(draft, kinds, order, edited) {
    this.ground.clearLayers();
    this.layers.clear();
    for (const feature of draft.now.values()) if (feature.properties?.golf === "hole" && feature.geometry?.type === "LineString") this.ground.addLayer(holeNumber(feature));
    const features = [...draft.now].filter(([ident, one]) => kinds(ident, one) && one.geometry);
    features.sort(([a, one], [b, other]) => order.indexOf(kinds(a, one)) - order.indexOf(kinds(b, other)));
    for (const [ident, feature] of features) {
      const kind = kinds(ident, feature);
      const interactive = /Polygon$/.test(feature.geometry.type) && !["boundary", "rough", "trees"].includes(kind);
      const state = `${edited.has(ident) ? " edited" : ""}${ident === this.chosen ? " chosen" : ""}`;
      const layer = asLayer(feature, {
        interactive,
        bubblingMouseEvents: false,
        smoothFactor: 0.3,
        style: { className: `ground k-${kind}${state}`, weight: 1 },
        pointToLayer: (_one, place) => L.circleMarker(place, { radius: 2, interactive: false }),
      });
      if (!layer) continue;
      if (interactive) layer.on("click", (event) => this.tapped(event.latlng, ident));
      this.ground.addLayer(layer);
      this.layers.set(ident, layer);
    }
    this.showHandles();
  }

  tapped(place, ident) {
    if (this.points) this.addPoint(place);
    else if (!this.marking) this.on.choose(ident);
  }

  frame(ident) {
    if (ident) {
      const bounds = this.layers.get(ident).getBounds();
      if (!this.map.getBounds().contains(bounds) || this.small(bounds)) this.map.fitBounds(bounds.pad(0.5), { animate: false, maxZoom: 20 });
      return;
    }
    const every = this.bounds();
    if (every.isValid()) this.map.fitBounds(every, { padding: [6, 6], animate: false });
    else this.map.setView([0, 0], 2, { animate: false }); // nothing is drawn yet
  }

  // Too small on the screen to shape.
  small(bounds) {
    const [one, other] = [bounds.getNorthWest(), bounds.getSouthEast()].map((at) => this.map.latLngToContainerPoint(at));
    return one.distanceTo(other) < SHAPED;
  }

  bounds() {
    return L.featureGroup([...this.layers.values()]).getBounds();
  }

  // Sketching

  startSketch(points = []) {
    this.points = [...points];
    this.map.doubleClickZoom.disable(); // two quick taps are two corners
    this.map.getContainer().classList.add("drawing");
    this.drawSketch();
  }

  addAtCross() {
    this.addPoint(this.map.getCenter());
  }

  addPoint(place) {
    this.points.push([round(place.lng), round(place.lat)]);
    this.drawSketch();
  }

  takeBack() {
    if (!this.points.length) return;
    this.points.pop();
    this.drawSketch();
  }

  endSketch() {
    const points = this.points;
    this.points = null;
    this.map.doubleClickZoom.enable();
    this.map.getContainer().classList.remove("drawing");
    this.sketch.clearLayers();
    return points;
  }

  drawSketch() {
    this.sketch.clearLayers();
    const places = this.points.map(([longitude, latitude]) => [latitude, longitude]);
    if (places.length > 1) this.sketch.addLayer(L.polygon(places, { className: "sketch", interactive: false }));
    for (const place of places) this.sketch.addLayer(handle(place, "sketch-point", false));
    this.on.sketched(this.points.length);
  }

  // A shape shown while it is not drawn yet, and how well the phone knows its place.
  preview(corners, accuracy = null, dots = false) {
    this.sketch.clearLayers();
    if (accuracy) this.sketch.addLayer(L.circle(accuracy.at, { radius: accuracy.metres, interactive: false, className: "accuracy" }));
    const places = corners.map(([longitude, latitude]) => [latitude, longitude]);
    if (places.length > 1) this.sketch.addLayer(L.polygon(places, { className: "sketch", interactive: false }));
    if (dots) for (const place of places) this.sketch.addLayer(handle(place, "sketch-point", false));
  }

  // Corners of the chosen area

  showHandles() {
    this.handles.clearLayers();
    const layer = this.chosen && this.layers.get(this.chosen);
    if (!layer || this.points) return;
    const feature = this.on.feature(this.chosen);
    const middle = layer.getBounds().getCenter();
    rings(feature).forEach((ring, number) => this.ringHandles(feature, ring, number));
    const mover = handle(middle, "mover", true, "<span>✥</span>");
    mover.on("dragend", () => {
      const to = mover.getLatLng();
      this.on.reshape(moved(feature, to.lng - middle.lng, to.lat - middle.lat));
    });
    this.handles.addLayer(mover);
  }

  ringHandles(feature, ring, number) {
    const corners = ring.slice(0, -1);
    const at = corners.map(([longitude, latitude]) => this.map.latLngToContainerPoint([latitude, longitude]));
    const shown = shownCorners(at, APART);
    corners.forEach(([longitude, latitude], index) => {
      const next = (index + 1) % corners.length;
      if (shown.includes(index)) {
        const chosen = this.corner?.ring === number && this.corner.index === index;
        const knob = handle([latitude, longitude], chosen ? "corner chosen" : "corner", true);
        knob.on("dragend", () => this.on.reshape(withCorner(feature, number, index, knob.getLatLng(), shown)));
        knob.on("click", () => {
          this.corner = { ring: number, index };
          this.on.corner(cornersOf(ring) > 3);
          this.showHandles();
        });
        this.handles.addLayer(knob);
      }
      if (at[index].distanceTo(at[next]) >= ROOM_BETWEEN) {
        const half = this.map.containerPointToLatLng(at[index].add(at[next]).divideBy(2));
        const dot = handle(half, "between", true);
        const add = () => this.on.reshape(withNewCorner(feature, number, index, dot.getLatLng()));
        dot.on("click dragend", add);
        this.handles.addLayer(dot);
      }
    });
  }

  // A ring round the place where an edge crosses itself; none for null.
  warn(at) {
    this.crossing.clearLayers();
    if (at) this.crossing.addLayer(L.circleMarker([at[1], at[0]], { radius: 22, interactive: false, className: "crossing" }));
  }

  showTheirs(edits) {
    this.theirs.clearLayers();
    for (const edit of edits) {
      if (edit.feature) this.theirs.addLayer(L.geoJSON(edit.feature, { interactive: false, style: { className: "theirs" } }));
    }
  }
}

// A feature as a layer; null for one whose geometry cannot be drawn, on a map that is still to be mended.
function asLayer(feature, options) {
  try {
    const layer = L.geoJSON(feature, options);
    return layer.getLayers().length && layer.getBounds().isValid() ? layer : null;
  } catch {
    return null;
  }
}

function holeNumber(feature) {
  const [longitude, latitude] = feature.geometry.coordinates[0];
  const span = document.createElement("span");
  span.textContent = feature.properties.ref ?? "";
  const icon = L.divIcon({ className: "hole-number", html: span, iconSize: [24, 24] });
  return L.marker([latitude, longitude], { icon, interactive: false, keyboard: false });
}

function handle(place, name, draggable, html = "<span></span>") {
  const icon = L.divIcon({ className: `handle ${name}`, html, iconSize: [TARGET, TARGET] });
  return L.marker(place, { icon, draggable, keyboard: false, interactive: draggable, zIndexOffset: name === "between" ? 0 : 500, bubblingMouseEvents: false });
}
