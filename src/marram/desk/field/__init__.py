"""The field: entries taken from the lists that clubs send, lots cast for places, withdrawals, and the draw of each round."""
