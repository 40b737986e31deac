"""Cases begun and not recorded yet; the words that entries are found by, with an index for full-text search."""

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None

WORDS = "log_words"


def upgrade() -> None:
    """Make the tables and the index."""
    op.create_table(
        "open_cases",
        sa.Column("id", sa.String(36), nullable=False),
        sa.Column("event_id", sa.String(36), nullable=False),
        sa.Column("begun_at", sa.Text(), nullable=False),
        sa.Column("by", sa.String(36), nullable=True),
        sa.Column("player", sa.String(36), nullable=True),
        sa.Column("group_id", sa.String(36), nullable=True),
        sa.Column("set_aside_at", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("id"),
        sa.ForeignKeyConstraint(["event_id"], ["events.id"]),
    )
    op.create_index(None, "open_cases", ["event_id"])
    op.create_table(
        "open_case_pages",
        sa.Column("case_id", sa.String(36), nullable=False),
        sa.Column("device", sa.String(36), nullable=False),
        sa.Column("address", sa.Text(), nullable=False),
        sa.Column("title", sa.Text(), nullable=False),
        sa.Column("kept_at", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("case_id", "device"),
        sa.ForeignKeyConstraint(["case_id"], ["open_cases.id"]),
    )
    op.create_table(
        WORDS,
        sa.Column("entry_id", sa.String(36), nullable=False),
        sa.Column("place", sa.Integer(), nullable=False, autoincrement=False),
        sa.Column("words", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("entry_id"),
        sa.ForeignKeyConstraint(["entry_id"], ["log.id"]),
        sa.UniqueConstraint("place"),
    )
    if op.get_bind().dialect.name == "sqlite":
        _index_in_sqlite()
    else:
        op.execute(
            "CREATE INDEX log_words_index ON log_words USING gin (array_to_tsvector(string_to_array(words, ' ')))"
        )


def downgrade() -> None:
    """Refuse: going back would lose what is kept. A backup made before is the way back."""
    raise NotImplementedError


def _index_in_sqlite() -> None:
    """Make an index of FTS5 that holds no words of its own, and the triggers that keep it as the table is."""
    op.execute(
        "CREATE VIRTUAL TABLE log_words_index USING fts5("
        "words, content='log_words', content_rowid='place', detail='none', tokenize=\"unicode61 tokenchars '_'\")"
    )
    op.execute(
        "CREATE TRIGGER log_words_added AFTER INSERT ON log_words BEGIN "
        "INSERT INTO log_words_index (rowid, words) VALUES (new.place, new.words); END"
    )
    op.execute(
        "CREATE TRIGGER log_words_removed AFTER DELETE ON log_words BEGIN "
        "INSERT INTO log_words_index (log_words_index, rowid, words) VALUES ('delete', old.place, old.words); END"
    )
    op.execute(
        "CREATE TRIGGER log_words_changed BEFORE UPDATE ON log_words "
        "BEGIN SELECT RAISE(ABORT, 'words are removed and made anew, not changed'); END"
    )
