"""Competition: the conditions that rulings are given under: day, form of play, sides, Local Rules."""
