"""The course file beside its versions: read as GeoJSON, and whether it has changed since."""

from dataclasses import dataclass
from pathlib import Path

from marram.course.reading.document import document_of
from marram.course.versions.map_edits import Document, Edit
from marram.course.versions.numbered_files import digest
from marram.errors import InputError
from marram.said import said


@dataclass(frozen=True, slots=True)
class FileNews:
    """What became of the course file since its versions last took note of it.

    Attributes:
        edits: what changed in it, feature by feature.
        beside: what else it holds otherwise now, by key, such as its credit line.
        mark: the digest of the file as it is now, to decide about just these changes.
        fault: why it can no longer be read; empty when it can.
    """

    edits: tuple[Edit, ...] = ()
    beside: tuple[str, ...] = ()
    mark: str = ""
    fault: str = ""


class CourseFile:
    """A course map as GeoJSON (made of it, where it is OpenStreetMap XML), read again only when the file is another than last time.

    Args:
        path: the file; it is never written.

    Attributes:
        mark: a digest of what it held when last read.
    """

    def __init__(self, path: Path) -> None:
        self.path = path
        self.mark = ""
        self._seen: tuple[tuple[int, int], Document] | None = None

    def document(self) -> Document:
        """Return what the file holds now; a feature without an identifier is named by its place in the file.

        Raises:
            InputError: it cannot be read, or is not GeoJSON, so that its features cannot be edited.
        """
        try:
            state = self.path.stat()
            mark = (state.st_mtime_ns, state.st_size)
            if self._seen is None or self._seen[0] != mark:
                document = self._read()
                self._seen, self.mark = (mark, document), digest(document)
        except InputError:
            raise
        except OSError as error:
            raise InputError(
                said(
                    "{path} cannot be read: {why}. Check the path.",
                    path=self.path,
                    why=error.strerror,
                )
            ) from None
        return self._seen[1]

    def _read(self) -> Document:
        document, faults = document_of(self.path)
        if document is None:
            if any(fault.check == "not_a_collection" for fault in faults):
                raise InputError(
                    said("{path} is no GeoJSON FeatureCollection; editing needs one.", path=self.path)
                )
            why = "; ".join(fault.what for fault in faults)
            raise InputError(
                said(
                    "{path} cannot be edited: {why}. Editing needs the map as GeoJSON.",
                    path=self.path,
                    why=why,
                )
            )
        return document
