"""Holes: hole locations set day by day on pictures of the greens."""
