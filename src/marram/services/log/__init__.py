"""Rulings in the log: recorded, like earlier ones, looked for, ruled again, put before the chief referee."""
