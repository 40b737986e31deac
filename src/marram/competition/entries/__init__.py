"""Entries of a competition: lists as clubs send them, read whole or not at all; the ballot; reserves and withdrawals."""
