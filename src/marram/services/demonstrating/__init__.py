"""The invented championship: made from a seed (``make_championship.py``), and put into records with its log (``championship.py``)."""
