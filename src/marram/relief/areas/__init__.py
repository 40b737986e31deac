"""A relief area once it is constructed: what limits it, where complete relief begins, and the marks and measures of its construction."""
