"""The book for readers: every provision with its statement, exceptions, situations and what changed, each at an address that stays.

``contents`` lists the provisions by Rule and theme, ``reading`` puts together what one page says, ``permanent`` writes a
situation as an address and reads it back, whatever the sampling of situations becomes.
"""
