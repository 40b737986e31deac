"""The tables: what a club's records hold, each declared once with its types; the migrations make them.

Identifiers are UUIDs in their usual written form, made by whoever makes the row, so that a phone without a network
can make one too. What can be derived from something else is not stored; columns that are read out of a JSON text are
made by the database itself, so that they cannot disagree with it.
"""

from marram.records.tables.base import Table
from marram.records.tables.club import Club, Course, HoleLocations, MapVersion
from marram.records.tables.event import (
    Entrant,
    Event,
    Group,
    GroupMember,
    OfficialDuty,
    Round,
    Side,
    Team,
)
from marram.records.tables.examinations import Candidate, CandidateAnswer, RetiredItem, SatExamination
from marram.records.tables.log import LogEntry, SealedPart
from marram.records.tables.people import Person, PersonalDetails
from marram.records.tables.sign_in import OPENS_DOORS, Invitation, Password, SignIn, Whereabouts
from marram.records.tables.teaching import ClassAnswer, KeptBriefing, TaughtClass
from marram.records.tables.working import MADE_ANEW, LogWords, OpenCase, OpenCasePage

EXPORTED = tuple(
    one
    for one in Table.metadata.sorted_tables
    if not one.info.get(MADE_ANEW) and not one.info.get(OPENS_DOORS)
)
"""The tables that an export holds: neither what is made anew from others, nor what lets people in."""

__all__ = [
    "EXPORTED",
    "Candidate",
    "CandidateAnswer",
    "ClassAnswer",
    "Club",
    "Course",
    "Entrant",
    "Event",
    "Group",
    "GroupMember",
    "HoleLocations",
    "Invitation",
    "KeptBriefing",
    "LogEntry",
    "LogWords",
    "MapVersion",
    "OfficialDuty",
    "OpenCase",
    "OpenCasePage",
    "Password",
    "Person",
    "PersonalDetails",
    "RetiredItem",
    "Round",
    "SatExamination",
    "SealedPart",
    "Side",
    "SignIn",
    "Table",
    "TaughtClass",
    "Team",
    "Whereabouts",
]
