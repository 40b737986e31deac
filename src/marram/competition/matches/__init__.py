"""A match: its state hole by hole, how it ends, the strokes given on its holes, rulings asked in time, and who moves on in a bracket."""
