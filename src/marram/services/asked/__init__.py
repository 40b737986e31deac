"""What a player may do, asked before anything is done ("may I?"), with its cost and what is allowed instead."""
