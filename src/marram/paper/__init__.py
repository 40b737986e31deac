"""Printed documents: the hole location sheet and the marking sheet, set with Typst."""
