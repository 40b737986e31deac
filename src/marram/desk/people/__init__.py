"""People at the desk: who is let in and what each role may do, joining by a link, signing in, and ending it from elsewhere.

Every request passes the :mod:`doorkeeper`, which looks up who asks and reads one table, :mod:`rights`: a route and a
role that do not stand in it together are refused.
"""
