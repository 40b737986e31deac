"""Checks: what is wrong with a map or with the marking of a course, each fault with its place and its remedy."""
