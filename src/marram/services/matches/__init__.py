"""Matches, brackets and team matches, as the log makes them."""
