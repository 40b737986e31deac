"""Briefings: a deck with one situation a page (drawing, question, ruling, why), drawn up from a topic with a seed.

``choosing`` finds the situations of a topic, ``drawing_up`` puts them into words, ``deck`` is what is shown and kept, with the
teacher's own words beside the engine's, ``deck_file`` writes it and reads it back, ``renewing`` asks the engine again.
"""
