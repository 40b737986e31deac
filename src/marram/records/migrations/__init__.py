"""How the tables came to be: one migration for each change of the schema, run by Alembic, shipped with the package."""
