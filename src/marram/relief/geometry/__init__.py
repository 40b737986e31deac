"""Geometry: outlines as arrays, limits decided by distances, and the one tolerance."""
