"""A card in the scoring area: both figures of each hole, certification, the rulings laid beside it, and what the Rules make of it.

A card is made of acts in their order, as they are entered, and is never changed otherwise. What follows from a fault of a card is
not decided here: facts are built from it, and the Rules are asked (3.3b, 3.3c, 20.2e, 21 to 23). What they need and nobody
has told stays a question.
"""
