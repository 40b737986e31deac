"""The draw: who plays with whom and when, by the wishes that were made; round robins, daylight, and times as a calendar."""
