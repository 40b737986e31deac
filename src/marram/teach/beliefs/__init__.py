"""What players commonly believe and why it is wrong, tied to the facts of a ruling.

Each belief is an outcome that the engine gives: with one fact of the situation otherwise (``near_situations.py``), or by the
Rules until 2018 (``until_2018.py``). It is told of a ruling only where that outcome is computed and is not the ruling
(``telling.py``); nothing is made up for others. That players believe it is common practice: our own lists.
"""
