"""A verifier of drawn relief that could have been written by somebody else: it shares no code with marram.

It is given the map's file, the hole, the places in degrees, the player, the edition, and the answer as it is
exported (the option's fields and the GeoJSON of the areas). It reads the file itself, lays it into a plane of
its own, decides itself what ground a place is, derives the limits from the Rules, and compares place by place.
Only ``asking`` knows marram; ``made_maps`` makes courses that hold what real maps trip over.

What the map cannot settle (a stream of unknown width, the round or flat end of a line) is kept as two readings,
the least and the most that is there: a place is wrongly accepted when even the lenient reading refuses it, and
wrongly refused when even the strict one allows it.
"""
