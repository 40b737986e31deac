"""The things of one course of a file, which may hold several."""

from dataclasses import dataclass


@dataclass(frozen=True, eq=False)
class Course:
    """The things of one course of a file."""

    things: tuple
    outline: object = None

    @classmethod
    def of(cls, things, name=None):
        """Return the course of a file, by its name where the file holds several."""
        outlines = [one for one in things if one.what == "course"]
        own = next((one for one in outlines if name is None or one.tags.get("name") == name), None)
        if own is None:
            return cls(tuple(things))
        others = [one.geometry for one in outlines if one is not own]
        kept = [
            one
            for one in things
            if one.what != "course"
            and (own.geometry.intersects(one.geometry) or not any(one.geometry.intersects(o) for o in others))
        ]
        return cls(tuple(kept), own)

    def of_kind(self, *kinds):
        """Return the things of some kinds."""
        return [one for one in self.things if one.what in kinds]

    @property
    def holes(self):
        """Numbers of the holes."""
        return sorted(
            int(one.tags["ref"]) for one in self.of_kind("hole") if one.tags.get("ref", "").isdigit()
        )
