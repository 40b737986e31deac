"""Interference: what must be clear of a condition (lie, stance, swing, lines of play and sight), and the nearest point where it is."""
