"""Signing in: invitations, those signed in, passwords; where officials said they are; PostgreSQL tells of what was added."""

from typing import Any

import sqlalchemy as sa
from alembic import op
from sqlalchemy import Column

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None

KNOWN_ROLE = "role IN ('chief_referee', 'referee', 'committee', 'scorer', 'starter', 'player')"
CHANGING = ("log", "open_cases", "whereabouts")
"""Tables whose changes others want to hear of at once."""


def upgrade() -> None:
    """Make the tables; in PostgreSQL also what tells those who listen."""
    _invitations()
    _sign_ins()
    op.create_table(
        "passwords",
        _ident("person_id"),
        _words("hashed"),
        _words("set_at"),
        sa.PrimaryKeyConstraint("person_id"),
        sa.ForeignKeyConstraint(["person_id"], ["people.id"]),
    )
    op.create_table(
        "whereabouts",
        _ident("event_id"),
        _ident("person_id"),
        Column("hole", sa.Integer(), nullable=True),
        _words("words"),
        _words("reported_at"),
        sa.PrimaryKeyConstraint("event_id", "person_id"),
        sa.ForeignKeyConstraint(["event_id"], ["events.id"]),
        sa.ForeignKeyConstraint(["person_id"], ["people.id"]),
    )
    if op.get_bind().dialect.name == "postgresql":
        _telling()


def downgrade() -> None:
    """Refuse: going back would lose what is kept. A backup made before is the way back."""
    raise NotImplementedError


def _ident(name: str = "id", **options: Any) -> Column[str]:
    return Column(name, sa.String(36), **({"nullable": False} | options))


def _words(name: str, **options: Any) -> Column[str]:
    return Column(name, sa.Text(), **({"nullable": False} | options))


def _invitations() -> None:
    op.create_table(
        "invitations",
        _ident(),
        _ident("event_id"),
        _words("role"),
        Column("secret", sa.LargeBinary(), nullable=False),
        _ident("made_by", nullable=True),
        _words("made_at"),
        Column("uses_left", sa.Integer(), nullable=False),
        _words("expires_at"),
        _words("ended_at", nullable=True),
        sa.PrimaryKeyConstraint("id"),
        sa.ForeignKeyConstraint(["event_id"], ["events.id"]),
        sa.ForeignKeyConstraint(["made_by"], ["people.id"]),
        sa.UniqueConstraint("secret"),
        sa.CheckConstraint(KNOWN_ROLE, name="known_role"),
        sa.CheckConstraint("uses_left >= 0", name="never_below_none"),
    )
    op.create_index(None, "invitations", ["event_id"])


def _sign_ins() -> None:
    op.create_table(
        "sign_ins",
        _ident(),
        _ident("event_id"),
        _ident("person_id"),
        _words("role"),
        Column("secret", sa.LargeBinary(), nullable=False),
        _words("device"),
        _words("began_at"),
        _words("seen_at"),
        _words("expires_at"),
        _words("ended_at", nullable=True),
        sa.PrimaryKeyConstraint("id"),
        sa.ForeignKeyConstraint(["event_id"], ["events.id"]),
        sa.ForeignKeyConstraint(["person_id"], ["people.id"]),
        sa.UniqueConstraint("secret"),
        sa.CheckConstraint(KNOWN_ROLE, name="known_role"),
    )
    op.create_index("ix_sign_ins_event_id_person_id", "sign_ins", ["event_id", "person_id"])


def _telling() -> None:
    op.execute(
        "CREATE FUNCTION tell_of_change() RETURNS trigger LANGUAGE plpgsql AS "
        "$$ BEGIN PERFORM pg_notify('marram_changes', TG_TABLE_NAME); RETURN NULL; END $$"
    )
    for table in CHANGING:
        op.execute(
            f"CREATE TRIGGER {table}_tells AFTER INSERT OR UPDATE OR DELETE ON {table} "
            "FOR EACH STATEMENT EXECUTE FUNCTION tell_of_change()"
        )
