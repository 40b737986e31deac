"""The course map: import, checks, local metric plane, and which area of the course a ball lies in."""

from marram.course.loading import check, load

__all__ = ["check", "load"]
