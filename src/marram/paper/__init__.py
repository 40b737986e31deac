"""Printed documents: the hole location sheet and the marking sheet, set with Typst; the sheets of the event as one value for paper, page and terminal."""
