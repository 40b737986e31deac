"""What results need of a player's entry: tees and a Playing Handicap as given; of a person sex and year of birth."""

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the columns; what was kept before knows nothing of them."""
    op.add_column("entrants", sa.Column("tees", sa.Text(), nullable=True))
    op.add_column("entrants", sa.Column("playing_handicap", sa.Integer(), nullable=True))
    op.add_column("personal_details", sa.Column("sex", sa.Text(), nullable=True))
    op.add_column("personal_details", sa.Column("born", sa.Integer(), nullable=True))


def downgrade() -> None:
    """Refuse: going back would lose what is kept. A backup made before is the way back."""
    raise NotImplementedError
