"""Incidents: mats on the fairway."""

from marram.rules.incidents.incident import Incident

THEME = "Local Rules: mats"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "fairway_mat",
        "A mat must be used on the fairway, or was not used",
        "E-12",
        THEME,
        "book.local_rules.area_e_mats:fairway_mat",
        "winter mat mats artificial astroturf protect turf compulsory fairway placed rolled off putter",
    ),
)
