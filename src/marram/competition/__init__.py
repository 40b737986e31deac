"""A competition computed from plain values: its conditions, entries, draw, cards and results.

Nothing is kept here that can be derived, and nothing is asked of a database or a screen.
"""
