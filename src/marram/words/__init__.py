"""Words for people: the message catalogue, and results turned into sheets that people read."""
