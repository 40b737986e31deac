"""The English texts of pages, commands and papers: one file per subject, each with ``TEXTS``, name → sentence.

A name that ends in ``.one`` has a partner in ``.several``: what is said of one thing, and of none or several.
"""
