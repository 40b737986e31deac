"""One event, one ruling: different ways into the same event are compared over all paths.

``ways.py`` compares, ``test_pairs.py`` finds pairs of incidents that contradict each other, ``judged.json`` says which of
them are different events and why, and ``events.json`` tells events in all the ways an official may come in by.
"""
