"""The log at the desk: a ruling recorded with one tap, the entries of the event, and each on a page of its own."""
