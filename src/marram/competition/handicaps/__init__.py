"""Handicap Indexes of very many players at once, in NumPy: the same digits as :mod:`marram.handicap`, which explains one."""
