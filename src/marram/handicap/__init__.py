"""The Rules of Handicapping as code: from scores to an index, and from an index to strokes on a course.

Exact integers and decimals only; every rounding stands where the published text of its edition puts it.
The room knows no map, no database and no competition.
"""
