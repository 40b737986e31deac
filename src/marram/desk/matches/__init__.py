"""Matches: who meets whom and how it stands, a match entered hole by hole with one tap each, team matches."""
