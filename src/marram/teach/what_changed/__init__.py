"""What another day rules differently, told as a teacher would: one change for each thing that was decided anew.

The book says where (its dated branches), the engine what they touch; the sentences are our own.
"""
