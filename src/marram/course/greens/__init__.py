"""Greens: their frame, slopes and elevations; hole locations, and what speaks against a place."""
