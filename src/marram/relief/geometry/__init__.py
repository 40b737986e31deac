"""Geometry: outlines as arrays, relief areas decided by distances, their limits, and the one tolerance."""
