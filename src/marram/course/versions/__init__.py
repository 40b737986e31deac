"""Versions: maps and hole locations kept by day; edits, conflicts, and which map is in force on which day."""
