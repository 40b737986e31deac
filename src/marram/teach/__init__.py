"""Teaching: the engine asked other questions (what changed, why this ruling, what the players believe).

What is taught is computed from the book, so that it cannot be wrong where the book is right.
"""
