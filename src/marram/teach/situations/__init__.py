"""Situations sampled from the decision graph, told as a person would: each with what must be known, and its ruling.

What happens often on courses comes often, and each provision gets its turn (``how_often``, ``reaching``); a walk through
the graph of an incident (``walk``) answers each question met; the facts that decided are told, no others
(``situation``), so that who hears them can rule.
"""
