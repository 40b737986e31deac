"""Constructions: one file for each way to find a reference point and the area that hangs on it."""
