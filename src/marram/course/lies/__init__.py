"""Lies: which area of the course a ball lies in, decided by distances in the order of Rule 2.2c, and what the map cannot know."""
