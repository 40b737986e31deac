"""The first schema: clubs, courses by day, people, events, the log.

Written out in full, and not taken from the tables as they are now: what a file of this schema holds never changes.
"""

from typing import Any

import sqlalchemy as sa
from alembic import op
from sqlalchemy import Column

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None

LOG = "log"
KEPT_AS_IT_IS = (LOG, "map_versions", "hole_locations")
"""Tables whose rows are only ever added."""


def upgrade() -> None:
    """Make every table, and the triggers that keep what is only ever added."""
    _club()
    _people()
    _event()
    _groups()
    _log()
    if op.get_bind().dialect.name == "sqlite":
        _guards_in_sqlite()
    else:
        _guards_in_postgresql()


def downgrade() -> None:
    """Refuse: going back would lose what is kept. A backup made before is the way back."""
    raise NotImplementedError


def _ident(name: str = "id", **options: Any) -> Column[str]:
    return Column(name, sa.String(36), **({"nullable": False} | options))


def _words(name: str, **options: Any) -> Column[str]:
    return Column(name, sa.Text(), **({"nullable": False} | options))


def _number(name: str, **options: Any) -> Column[int]:
    return Column(name, sa.Integer(), **({"nullable": False, "autoincrement": False} | options))


def _read_out(name: str, *, whole_number: bool = False) -> Column[Any]:
    """Return a column that the database reads out of the body of an entry."""
    if op.get_bind().dialect.name == "sqlite":
        source = f"json_extract(body, '$.{name}')"
    else:
        source = f"(body::json ->> '{name}')" + ("::integer" if whole_number else "")
    kind = sa.Integer() if whole_number else sa.Text()
    return Column(name, kind, sa.Computed(source, persisted=True), nullable=True)


def _club() -> None:
    op.create_table(
        "clubs",
        _ident(),
        _words("name"),
        _words("time_zone", nullable=True),
        sa.PrimaryKeyConstraint("id"),
        sa.UniqueConstraint("name"),
    )
    op.create_table(
        "courses",
        _ident(),
        _ident("club_id"),
        _words("name"),
        _words("map_file", nullable=True),
        sa.PrimaryKeyConstraint("id"),
        sa.ForeignKeyConstraint(["club_id"], ["clubs.id"]),
        sa.UniqueConstraint("club_id", "name"),
    )
    for table, day in (("map_versions", ()), ("hole_locations", (("day", sa.Date()),))):
        op.create_table(
            table,
            _ident("course_id"),
            *(Column(name, kind, nullable=False) for name, kind in day),
            _number("number"),
            Column("content", sa.LargeBinary(), nullable=False),
            sa.PrimaryKeyConstraint("course_id", *(name for name, _ in day), "number"),
            sa.ForeignKeyConstraint(["course_id"], ["courses.id"]),
        )


def _people() -> None:
    op.create_table("people", _ident(), _words("erased_at", nullable=True), sa.PrimaryKeyConstraint("id"))
    op.create_table(
        "personal_details",
        _ident("person_id"),
        _words("name"),
        _words("club", nullable=True),
        _number("revision"),
        sa.PrimaryKeyConstraint("person_id"),
        sa.ForeignKeyConstraint(["person_id"], ["people.id"]),
    )


def _event() -> None:
    op.create_table(
        "events",
        _ident(),
        _ident("club_id"),
        _words("name"),
        _words("conditions"),
        _number("revision"),
        sa.PrimaryKeyConstraint("id"),
        sa.ForeignKeyConstraint(["club_id"], ["clubs.id"]),
        sa.UniqueConstraint("club_id", "name"),
    )
    op.create_table(
        "rounds",
        _ident(),
        _ident("event_id"),
        _number("number"),
        _words("name"),
        Column("played_on", sa.Date(), nullable=True),
        _ident("course_id", nullable=True),
        _words("conditions"),
        sa.PrimaryKeyConstraint("id"),
        sa.ForeignKeyConstraint(["event_id"], ["events.id"]),
        sa.ForeignKeyConstraint(["course_id"], ["courses.id"]),
        sa.UniqueConstraint("event_id", "number"),
        sa.CheckConstraint("number >= 1", name="counted_from_one"),
    )
    op.create_index(None, "rounds", ["event_id"])
    op.create_table(
        "officials",
        _ident("event_id"),
        _ident("person_id"),
        _words("role"),
        _words("duty"),
        sa.PrimaryKeyConstraint("event_id", "person_id", "role"),
        sa.ForeignKeyConstraint(["event_id"], ["events.id"]),
        sa.ForeignKeyConstraint(["person_id"], ["people.id"]),
        sa.CheckConstraint(
            "role IN ('chief_referee', 'referee', 'committee', 'scorer', 'starter')", name="known_role"
        ),
    )


def _groups() -> None:
    op.create_table(
        "teams",
        _ident(),
        _ident("event_id"),
        _words("name"),
        sa.PrimaryKeyConstraint("id"),
        sa.ForeignKeyConstraint(["event_id"], ["events.id"]),
        sa.UniqueConstraint("event_id", "name"),
    )
    op.create_table(
        "sides",
        _ident(),
        _ident("event_id"),
        _ident("team_id", nullable=True),
        _words("name"),
        sa.PrimaryKeyConstraint("id"),
        sa.ForeignKeyConstraint(["event_id"], ["events.id"]),
        sa.ForeignKeyConstraint(["team_id"], ["teams.id"]),
    )
    op.create_index(None, "sides", ["event_id"])
    op.create_table(
        "entrants",
        _ident(),
        _ident("event_id"),
        _ident("person_id"),
        _ident("side_id", nullable=True),
        _ident("team_id", nullable=True),
        _words("handicap_index", nullable=True),
        sa.PrimaryKeyConstraint("id"),
        sa.ForeignKeyConstraint(["event_id"], ["events.id"]),
        sa.ForeignKeyConstraint(["person_id"], ["people.id"]),
        sa.ForeignKeyConstraint(["side_id"], ["sides.id"]),
        sa.ForeignKeyConstraint(["team_id"], ["teams.id"]),
        sa.UniqueConstraint("event_id", "person_id"),
    )
    op.create_index(None, "entrants", ["person_id"])
    op.create_table(
        "groups",
        _ident(),
        _ident("round_id"),
        _number("number"),
        Column("starts_at", sa.Time(), nullable=True),
        _number("tee"),
        _number("revision"),
        sa.PrimaryKeyConstraint("id"),
        sa.ForeignKeyConstraint(["round_id"], ["rounds.id"]),
        sa.UniqueConstraint("round_id", "number"),
    )
    op.create_table(
        "group_members",
        _ident("group_id"),
        _ident("entrant_id"),
        _number("place"),
        sa.PrimaryKeyConstraint("group_id", "entrant_id"),
        sa.ForeignKeyConstraint(["group_id"], ["groups.id"]),
        sa.ForeignKeyConstraint(["entrant_id"], ["entrants.id"]),
        sa.UniqueConstraint("group_id", "place"),
    )
    op.create_index(None, "group_members", ["entrant_id"])


def _log() -> None:
    op.create_table(
        "log",
        _ident("event_id"),
        _number("number"),
        _ident(),
        *(_words(name) for name in ("recorded_at", "body", "previous", "digest")),
        _read_out("kind"),
        _read_out("player"),
        _read_out("hole", whole_number=True),
        _read_out("corrects"),
        _read_out("alike"),
        sa.PrimaryKeyConstraint("event_id", "number"),
        sa.ForeignKeyConstraint(["event_id"], ["events.id"]),
        sa.UniqueConstraint("id"),
        sa.CheckConstraint("number >= 1", name="counted_from_one"),
    )
    for columns in (["event_id", "kind"], ["event_id", "player"], ["corrects"], ["alike"]):
        op.create_index(None, "log", columns)
    op.create_table(
        "sealed_parts",
        _ident(),
        _ident("entry_id"),
        _words("what"),
        _words("media_type"),
        Column("salt", sa.LargeBinary(), nullable=True),
        Column("content", sa.LargeBinary(), nullable=True),
        _words("erased_at", nullable=True),
        sa.PrimaryKeyConstraint("id"),
        sa.ForeignKeyConstraint(["entry_id"], [f"{LOG}.id"]),
        sa.CheckConstraint(
            "(content IS NULL) = (erased_at IS NOT NULL) AND (salt IS NULL) = (content IS NULL)",
            name="whole_or_erased",
        ),
    )
    op.create_index(None, "sealed_parts", ["entry_id"])


ADDED_ONLY = "what is kept in %s is only ever added to"
ERASED_ONLY = "a sealed part can be erased, and not changed otherwise"
NOT_ERASING = (
    "NEW.content IS NOT NULL OR OLD.content IS NULL OR NEW.id <> OLD.id OR NEW.entry_id <> OLD.entry_id "
    "OR NEW.what <> OLD.what OR NEW.media_type <> OLD.media_type"
)


def _guards_in_sqlite() -> None:
    for table in KEPT_AS_IT_IS:
        for deed in ("update", "delete"):
            op.execute(
                f"CREATE TRIGGER {table}_refuses_{deed} BEFORE {deed} ON {table} "
                f"BEGIN SELECT RAISE(ABORT, '{ADDED_ONLY % table}'); END"
            )
    op.execute(
        "CREATE TRIGGER sealed_parts_refuses_delete BEFORE DELETE ON sealed_parts "
        f"BEGIN SELECT RAISE(ABORT, '{ERASED_ONLY}'); END"
    )
    op.execute(
        f"CREATE TRIGGER sealed_parts_refuses_update BEFORE UPDATE ON sealed_parts WHEN {NOT_ERASING} "
        f"BEGIN SELECT RAISE(ABORT, '{ERASED_ONLY}'); END"
    )


def _guards_in_postgresql() -> None:
    op.execute(
        "CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS "
        "$$ BEGIN RAISE EXCEPTION USING MESSAGE = TG_ARGV[0], ERRCODE = 'restrict_violation'; END $$"
    )
    for table in KEPT_AS_IT_IS:
        told = ADDED_ONLY % table
        op.execute(
            f"CREATE TRIGGER {table}_refuses_change BEFORE UPDATE OR DELETE ON {table} "
            f"FOR EACH ROW EXECUTE FUNCTION refuse_change('{told}')"
        )
        op.execute(
            f"CREATE TRIGGER {table}_refuses_truncate BEFORE TRUNCATE ON {table} "
            f"FOR EACH STATEMENT EXECUTE FUNCTION refuse_change('{told}')"
        )
    op.execute(
        "CREATE TRIGGER sealed_parts_refuses_delete BEFORE DELETE ON sealed_parts "
        f"FOR EACH ROW EXECUTE FUNCTION refuse_change('{ERASED_ONLY}')"
    )
    op.execute(
        f"CREATE TRIGGER sealed_parts_refuses_update BEFORE UPDATE ON sealed_parts FOR EACH ROW "
        f"WHEN ({NOT_ERASING}) EXECUTE FUNCTION refuse_change('{ERASED_ONLY}')"
    )
