"""What is kept: one file for a club, or one PostgreSQL database. Courses, people, events and the log; it knows no Rule, no map and no screen.

SQLAlchemy is loaded when records are opened, never before.
"""
