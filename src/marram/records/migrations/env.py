"""What Alembic runs a migration in: the connection it is given, one transaction for all of it."""

from alembic import context

from marram.records.tables import Table

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=Table.metadata,
    transactional_ddl=True,
)
with context.begin_transaction():
    context.run_migrations()
