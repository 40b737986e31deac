"""The field of an event and its draw: entries taken, lots cast, groups and starting times, further rounds."""
