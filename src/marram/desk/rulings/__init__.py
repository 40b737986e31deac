"""Rulings: from the ball on the map and what happened to the ruling and its relief; one case or a story, kept in the address."""
