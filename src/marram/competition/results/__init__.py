"""From cards to results: the score of each side, the leader board, the cut, ties, teams, a series, and why a place is what it is.

All arithmetic is in integers and fractions. Nothing here rules on a card: what the Rules take away from a side comes in
as a value (:class:`marram.competition.results.card.Out`, and scores with their penalty strokes in them).
"""
