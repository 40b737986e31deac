"""The book for everybody: provisions by Rule and by theme, each with its situations, at addresses that can be sent to a player.

No page needs a sign-in or a script; each names itself and what it says for whoever shares its address.
"""
