"""The scoring area: cards by group, a card entered hole by hole, the rulings beside it, and what the Rules make of it."""
