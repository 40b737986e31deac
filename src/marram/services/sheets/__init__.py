"""The sheets of an event, made of a file or of what records keep."""
