"""Drawings of situations: each placed on a course where the map itself says what is told of the ground, or not drawn.

What is told of the ground (``grounds``) is searched for on the map (``placing``, over ``candidates``); a place counts
only where the map, asked like any case, answers the same. It is drawn with the parts of the relief drawings
(``scene``), the ruling's options by those drawings themselves.
"""
