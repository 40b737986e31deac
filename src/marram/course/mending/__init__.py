"""Mending: for each fault of a map that a definite change can mend, a proposal; nothing is changed unasked.

A proposal holds one choice or several, each a list of edits of the map (:mod:`marram.course.versions.map_edits`).
Accepting one makes the edits on a copy; the proposals are then found again, until none is left.
"""
