"""The way to an evacuation point, in words."""

TEXTS: dict[str, str] = {
    "unnamed": "evacuation point",
    "way.both": "To {point}: {tee:.0f} m from the tee, {green:.0f} m from the green",
    "way.tee": "From the tee to {point}: {metres:.0f} m",
    "way.green": "From the green to {point}: {metres:.0f} m",
    "offers.building": "{point} (building)",
    "offers.vehicle": "{point} (vehicles)",
    "offers.shelter": "{point} (shelter)",
    "offers.unsaid": "{point} (what waits there is not mapped)",
    "planned": "{way} (as planned for this hole)",
    "crosses": "{way}; straight across {ground}: go around",
}
