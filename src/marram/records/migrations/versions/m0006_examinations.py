"""Examinations that are sat on screen, and items that are retired."""

import sqlalchemy as sa
from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None

CHANGING = ("examinations", "examination_candidates", "examination_answers")
"""Tables whose changes others want to hear of at once."""


def upgrade() -> None:
    """Make the tables; in PostgreSQL also what tells those who listen."""
    op.create_table(
        "examinations",
        sa.Column("id", sa.String(36), nullable=False),
        sa.Column("event_id", sa.String(36), nullable=False),
        sa.Column("papers", sa.Text(), nullable=False),
        sa.Column("minutes", sa.Integer(), nullable=False),
        sa.Column("made_at", sa.Text(), nullable=False),
        sa.Column("began_at", sa.Text(), nullable=True),
        sa.Column("closed_at", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("id"),
        sa.ForeignKeyConstraint(["event_id"], ["events.id"]),
    )
    op.create_index(None, "examinations", ["event_id"])
    op.create_table(
        "examination_candidates",
        sa.Column("id", sa.String(36), nullable=False),
        sa.Column("examination_id", sa.String(36), nullable=False),
        sa.Column("code", sa.Text(), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("form", sa.Text(), nullable=False),
        sa.Column("extra", sa.Integer(), nullable=False),
        sa.Column("handed_in_at", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("id"),
        sa.ForeignKeyConstraint(["examination_id"], ["examinations.id"]),
        sa.UniqueConstraint("code"),
        sa.UniqueConstraint("examination_id", "number"),
    )
    op.create_table(
        "examination_answers",
        sa.Column("candidate_id", sa.String(36), nullable=False),
        sa.Column("item", sa.Integer(), nullable=False, autoincrement=False),
        sa.Column("place", sa.Integer(), nullable=False),
        sa.Column("turn", sa.Integer(), nullable=False),
        sa.Column("arrived_at", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("candidate_id", "item"),
        sa.ForeignKeyConstraint(["candidate_id"], ["examination_candidates.id"]),
    )
    op.create_table(
        "retired_items",
        sa.Column("ident", sa.String(36), nullable=False),
        sa.Column("examination_id", sa.String(36), nullable=False),
        sa.Column("why", sa.Text(), nullable=False),
        sa.Column("retired_at", sa.Text(), nullable=False),
        sa.Column("restored_at", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("ident"),
        sa.ForeignKeyConstraint(["examination_id"], ["examinations.id"]),
    )
    if op.get_bind().dialect.name == "postgresql":
        for table in CHANGING:
            op.execute(
                f"CREATE TRIGGER {table}_tells AFTER INSERT OR UPDATE OR DELETE ON {table} "
                "FOR EACH STATEMENT EXECUTE FUNCTION tell_of_change()"
            )


def downgrade() -> None:
    """Refuse: going back would lose what is kept. A backup made before is the way back."""
    raise NotImplementedError
