"""The day of an event: what still stands before the first start, where officials are, play stopped and resumed."""
