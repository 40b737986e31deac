"""The sheets of the event: what stands on each, from the conditions, the draw, the cards and the log; one file for each sheet."""
