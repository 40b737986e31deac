"""Place: what is given about a ball on the ground of a hole (spots, player, conditions) and what the map says of it."""
