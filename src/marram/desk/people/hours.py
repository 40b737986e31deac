"""The hour of the day of an event: what the rooms are ordered by."""

BEFORE = "before"
PLAY = "play"
SCORING = "scoring"
AFTER = "after"

HOURS = (BEFORE, PLAY, SCORING, AFTER)
"""Before play, while groups are on the course, while the last cards are returned, and afterwards."""
