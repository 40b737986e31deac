"""What the finding of incidents is learned from, and how: sentences of our own, tables of words, and the fitting.

Nothing here ships or runs with marram but the file it writes (``marram/rules/finding/model.json``).
"""
