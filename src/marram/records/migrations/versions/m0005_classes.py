"""Classes that are taught, and what each phone answered."""

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None

CHANGING = ("classes", "class_answers")
"""Tables whose changes others want to hear of at once."""


def upgrade() -> None:
    """Make the tables; in PostgreSQL also what tells those who listen."""
    op.create_table(
        "classes",
        sa.Column("id", sa.String(36), nullable=False),
        sa.Column("event_id", sa.String(36), nullable=False),
        sa.Column("code", sa.Text(), nullable=False),
        sa.Column("seed", sa.Integer(), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("explained", sa.Integer(), nullable=False),
        sa.Column("begun_at", sa.Text(), nullable=False),
        sa.Column("ended_at", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("id"),
        sa.ForeignKeyConstraint(["event_id"], ["events.id"]),
        sa.UniqueConstraint("code"),
    )
    op.create_index(None, "classes", ["event_id"])
    op.create_table(
        "class_answers",
        sa.Column("class_id", sa.String(36), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False, autoincrement=False),
        sa.Column("device", sa.String(36), nullable=False),
        sa.Column("place", sa.Integer(), nullable=False),
        sa.Column("answered_at", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("class_id", "number", "device"),
        sa.ForeignKeyConstraint(["class_id"], ["classes.id"]),
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
