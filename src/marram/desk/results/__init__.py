"""Results: the leader board as it stands, why a place is what it is, the close, and a board for everybody."""
