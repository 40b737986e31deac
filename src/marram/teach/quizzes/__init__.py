"""Multiple-choice questions: a situation, its ruling, and wrong answers that are rulings of situations near it.

What people take for the ruling is mostly the ruling of something that differs in one fact, or that of an older edition.
"""
