"""Faults of a map."""

TEXTS: dict[str, str] = {
    "fault": "{what}. {remedy}",
    "fault_at": "{where}: {what}. {remedy}",
}
